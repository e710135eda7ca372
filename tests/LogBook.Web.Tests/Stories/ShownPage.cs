using System.Globalization;
using System.Text.RegularExpressions;
using AngleSharp.Dom;

namespace LogBook.Web.Tests.Stories;

/// <summary>A page as somebody reads it who has just come to it: what is folded away or meant for no eye is not there.</summary>
internal sealed partial class ShownPage(string address, IDocument page)
{
    private const string Hidden = "[hidden], template, script, style, svg, .unseen, select, datalist";

    public string Address { get; } = address;

    public IElement Main { get; } = page.QuerySelector("main") ?? throw new InvalidOperationException($"{address} has no main part.");

    /// <summary>Addresses of the links that can be tapped.</summary>
    public IReadOnlyList<string> Links => [.. Main.QuerySelectorAll("a[href]").Where(IsShown).Select(link => link.GetAttribute("href")!).Where(href => !href.StartsWith('#')).Distinct()];

    /// <summary>The row that a link has led to; null where none is marked.</summary>
    public IElement? Sought => Main.QuerySelector("tr.sought") is { } row && IsShown(row) && row.Id == "sought" ? row : null;

    /// <summary>Rows, items, facts and paragraphs that hold all of these words; the smallest first.</summary>
    public IReadOnlyList<IElement> Lines(params IReadOnlyList<string> words) =>
        [.. Main.QuerySelectorAll("tr, li, dl, p").Where(IsShown).Where(line => Of(line) is var text && words.All(word => text.Contains(word, StringComparison.Ordinal))).OrderBy(line => line.TextContent.Length)];

    /// <summary>Visible text of a part, with plain blanks and without thousands separators.</summary>
    public static string Of(IElement part) =>
        Thousands().Replace(Blanks().Replace(string.Join(' ', Texts(part)).Replace('\u00a0', ' ').Replace('\u202f', ' '), " "), "").Trim();

    /// <summary>The cell of a row under a heading; for a stacked table its label serves.</summary>
    public static IElement? Cell(IElement row, string heading)
    {
        if (row.QuerySelectorAll("td").FirstOrDefault(cell => cell.GetAttribute("data-label") == heading) is { } labelled)
        {
            return labelled;
        }

        var place = row.Closest("table")!.QuerySelectorAll("thead th").ToList().FindIndex(head => Of(head) == heading);
        return place < 0 ? null : row.Children.ElementAtOrDefault(place);
    }

    /// <summary>Number and uncertainty of a cell such as "-9 ± 3 %".</summary>
    public static (double Value, double Uncertainty)? Number(IElement? cell) =>
        cell is not null && Figure().Match(Of(cell)) is { Success: true } found
            ? (Parse(found.Groups[1].Value), found.Groups[2].Success ? Parse(found.Groups[2].Value) : 0)
            : null;

    private static double Parse(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static IEnumerable<string> Texts(INode part) => part.ChildNodes.SelectMany(node => node switch
    {
        IText text => [text.Data],
        IElement element when element.Matches(Hidden) => [],
        IElement element when IsFolded(element) => element.Children.Where(child => child.LocalName == "summary").SelectMany(Texts),
        _ => Texts(node),
    });

    private static bool IsFolded(IElement element) => element.LocalName == "details" && !element.HasAttribute("open");

    private static bool IsShown(IElement element)
    {
        for (IElement? at = element, below = null; at is not null; below = at, at = at.ParentElement)
        {
            if (at.Matches(Hidden) || (below is not null && IsFolded(at) && below.LocalName != "summary"))
            {
                return false;
            }
        }

        return true;
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Blanks();

    [GeneratedRegex(@"(?<=\d),(?=\d{3}(\D|$))")]
    private static partial Regex Thousands();

    [GeneratedRegex(@"(-?\d+(?:\.\d+)?)(?: ± (\d+(?:\.\d+)?))?")]
    private static partial Regex Figure();
}
