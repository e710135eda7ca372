using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using MimeKit;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>The figures of a summary as its reader sees them, in both parts of the mail.</summary>
public static partial class MailFigures
{
    /// <summary>The plain part.</summary>
    public static string Plain(MimeMessage mail) => mail.TextBody ?? string.Empty;

    /// <summary>The HTML part with its signs as they are read.</summary>
    public static string Html(MimeMessage mail) => WebUtility.HtmlDecode(mail.HtmlBody ?? string.Empty);

    /// <summary>Compares a figure in the HTML part and in the plain part with a number worked out by hand.</summary>
    /// <param name="mail">The summary.</param>
    /// <param name="code">Code of the figure.</param>
    /// <param name="of">What it is about, as the summary names it, or null.</param>
    /// <param name="byHand">The number worked out by hand.</param>
    public static void Equal(MimeMessage mail, string code, string? of, double byHand)
    {
        var name = FigureTexts.NameOf(code).In(Language.Spanish) + (of is null ? string.Empty : ", " + of);
        var html = Regex.Match(Html(mail), $"<td>{Regex.Escape(name)}</td><td>([^<]*)</td>");
        Assert.True(html.Success, $"no \"{name}\" in the HTML part");
        var plain = Regex.Match(Plain(mail), $"^{Regex.Escape(name)}: (.*?)\r?$", RegexOptions.Multiline);
        Assert.True(plain.Success, $"no \"{name}\" in the plain part");
        Assert.Equal(html.Groups[1].Value, plain.Groups[1].Value);

        var shown = Shown().Match(plain.Groups[1].Value);
        Assert.True(shown.Success, plain.Groups[1].Value);
        var value = Number(shown.Groups["value"].Value);

        // Shown rounded to the last digit of its uncertainty: half of that digit, and 0.05 % for the two routes to cycles, which
        // agree to 0.01 % here.
        Assert.InRange(value, byHand - Allowed(shown.Groups["plus"].Value, byHand), byHand + Allowed(shown.Groups["plus"].Value, byHand));
    }

    private static double Allowed(string plus, double byHand)
    {
        var digits = plus.Replace("\u00a0", string.Empty, StringComparison.Ordinal);
        var comma = digits.IndexOf(',', StringComparison.Ordinal);
        var step = comma < 0 ? Math.Pow(10, digits.Length - digits.TrimEnd('0').Length) : Math.Pow(10, comma + 1 - digits.Length);
        return (0.5 * step) + (0.0005 * Math.Abs(byHand));
    }

    private static double Number(string text) => double.Parse(
        text.Replace("\u00a0", string.Empty, StringComparison.Ordinal).Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex("^(?<value>-?[0-9\u00a0]+(,[0-9]+)?)[ \u00a0]±[ \u00a0](?<plus>[0-9\u00a0]+(,[0-9]+)?)([ \u00a0].*)?$", RegexOptions.ExplicitCapture)]
    private static partial Regex Shown();
}
