using System.Text.RegularExpressions;
using Bunit;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Visits;
using LogBook.Entry.Looks;

namespace LogBook.Web.Tests.Entry;

/// <summary>Parts of the form are shown anew only when what they read is another: none may be left behind.</summary>
public sealed partial class NothingStaleTests
{
    private static readonly string[] Typed = ["1", "95", "2,5", "1.234", "7..4", "<5", "48211", "-3", "9.3", "300", "yes", ""];
    private static readonly Language[] Languages = [Language.English, Language.Spanish, Language.Portuguese];

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public async Task RandomWalk_AfterEachAction_ShowsWhatAFormShownAnewShows(int seed)
    {
        var random = new Random(seed);
        await using var page = new EntryPage(EntryFirm.Firm);
        var acts = 0;
        for (var action = 0; action < 250; action++)
        {
            var what = Act(page, random);
            if (what is null)
            {
                continue;
            }

            acts++;
            var shown = Bare(page.Form.Markup);
            var state = page.Form.FindComponent<LooksPanel>().Instance.State;
            await page.Form.InvokeAsync(state.ShowAll);

            Assert.True(shown == Bare(page.Form.Markup), $"{acts}: {what}\n{FirstDifference(shown, Bare(page.Form.Markup))}");
        }

        Assert.True(acts > 150, $"{acts} acts");
    }

    [Fact]
    public async Task Value_Typed_ShowsAFewPartsAnew()
    {
        await using var page = new EntryPage();
        page.Go("Water");
        var parts = page.Form.FindComponents<LogBook.Entry.Fields.NumberField>();
        var before = parts.Sum(part => part.RenderCount);

        page.Form.Find("[data-key$='/value']").Change("300");

        Assert.True(parts.Count > 10, $"{parts.Count} boxes");
        Assert.InRange(parts.Sum(part => part.RenderCount) - before, 1, 3);
    }

    private static string? Act(EntryPage page, Random random)
    {
        switch (random.Next(10))
        {
            case 0:
                return Click(page, ".lb-step", random);
            case 1:
                return Click(page, ".lb-head > .lb-row button", random);
            case 2:
                page.Show(Any(Languages, random), random.Next(2) == 0 ? [] : [new Issue("systems[0].readings[0].value", "refused", "Refused.")]);
                return "language and refusals";
            case 3 or 4:
                return Click(page, ".lb-body button", random);
            case 5:
                return Change(page, ".lb-body select", random, random.Next(3) == 0 ? Any(Enum.GetNames<VisitKind>(), random) : string.Empty);
            case 6:
                return Change(page, "input[type=checkbox]", random, random.Next(2) == 0);
            default:
                return Change(page, "[data-key]", random, Any(Typed, random));
        }
    }

    private static string? Click(EntryPage page, string which, Random random)
    {
        if (page.Form.FindAll(which) is not { Count: > 0 } found)
        {
            return null;
        }

        var button = Any(found, random);
        if (button.HasAttribute("disabled"))
        {
            return null;
        }

        var what = $"click on {button.TextContent.Trim()}";
        button.Click();
        return what;
    }

    private static string? Change<T>(EntryPage page, string which, Random random, T value)
    {
        if (page.Form.FindAll(which) is not { Count: > 0 } found)
        {
            return null;
        }

        var box = Any(found, random);
        var what = $"{value} into {box.Id}";
        box.Change(value);
        return what;
    }

    private static string FirstDifference(string a, string b)
    {
        var at = 0;
        while (at < Math.Min(a.Length, b.Length) && a[at] == b[at])
        {
            at++;
        }

        return $"shown: …{Around(a, at)}…\nanew: …{Around(b, at)}…";
    }

    private static string Around(string text, int at) => text[Math.Max(0, at - 300)..Math.Min(text.Length, at + 200)];

    // Numbers of event handlers change whenever something is shown anew.
    private static string Bare(string markup) => Handler().Replace(markup, string.Empty);

    private static T Any<T>(IReadOnlyList<T> items, Random random) => items[random.Next(items.Count)];

    [GeneratedRegex(" blazor:[^=]+=\"[^\"]*\"")]
    private static partial Regex Handler();
}
