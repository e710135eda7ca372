using System.Globalization;
using System.Text;

namespace LogBook.Domain.Summaries;

/// <summary>The lines above the sections, the same in every form of the summary.</summary>
public static class SummaryHeader
{
    // Beyond this length no mail program shows a subject; the name may not push day and version out of it.
    private const int MostOfLine = 250;
    private const int MostOfName = 150;

    /// <summary>Names and values under the title.</summary>
    /// <param name="summary">The summary.</param>
    /// <returns>Pairs in the reader's language.</returns>
    public static IEnumerable<(string Name, string Value)> Of(VisitSummary summary)
    {
        var language = summary.Language;
        yield return (SummaryTexts.Customer.In(language), summary.Customer);
        yield return (SummaryTexts.Site.In(language), summary.SiteName + " (" + summary.SiteCode + ")");
        yield return (SummaryTexts.Date.In(language), summary.When);
        yield return (SummaryTexts.By.In(language), summary.By);
        yield return (SummaryTexts.Purpose.In(language), summary.Purpose);
    }

    /// <summary>What must be read before all else: a new version, a visit that was stopped.</summary>
    /// <param name="summary">The summary.</param>
    /// <returns>Sentences; none for an ordinary visit.</returns>
    public static IEnumerable<string> Notices(VisitSummary summary)
    {
        if (summary.ReissueReason is not null)
        {
            yield return SummaryTexts.Reissued.In(summary.Language, summary.Version, summary.ReissueReason);
        }

        if (summary.Stopped is not null)
        {
            yield return SummaryTexts.StoppedVisit.In(summary.Language, summary.Stopped);
        }
    }

    /// <summary>Title of the summary as one line, for a mail or a file.</summary>
    /// <param name="summary">The summary.</param>
    /// <returns>Site, day and, for a later one, version.</returns>
    public static string Subject(VisitSummary summary) => OneLine((summary.Version > 1 ? SummaryTexts.SubjectReissued : SummaryTexts.Subject)
        .In(summary.Language, OneLine(summary.SiteName, MostOfName), summary.Day, summary.Version));

    /// <summary>A text as one short line for a mail header or a console.</summary>
    /// <param name="text">Any text.</param>
    /// <param name="most">Characters that are kept, at most.</param>
    /// <returns>Without control characters, line breaks and marks that change the direction of what follows.</returns>
    public static string OneLine(string text, int most = MostOfLine)
    {
        var line = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (line.Length + rune.Utf16SequenceLength > most)
            {
                return line.Append('…').ToString();
            }

            switch (Rune.GetUnicodeCategory(rune))
            {
                case UnicodeCategory.Control or UnicodeCategory.LineSeparator or UnicodeCategory.ParagraphSeparator:
                    line.Append(' ');
                    break;
                case UnicodeCategory.Format:
                    break;
                default:
                    line.Append(rune.ToString());
                    break;
            }
        }

        return line.ToString();
    }
}
