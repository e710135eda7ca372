using System.Text;
using LogBook.Domain.Summaries;

namespace LogBook.Application.Summaries;

/// <summary>The visit summary as plain text: every value of the HTML part, readable without any.</summary>
public static class SummaryPlainText
{
    public static string Render(VisitSummary summary)
    {
        var text = new StringBuilder();
        var language = summary.Language;
        // A line break inside an entry is indented: no entry can look like a heading.
        void Line(string line = "") => text.Append(line.ReplaceLineEndings("\n    ")).Append('\n');
        void Heading(string heading)
        {
            Line();
            Line(heading);
            Line(new string('-', heading.Length));
        }

        Line(SummaryTexts.Title.In(language) + " · " + summary.Firm);
        Line();
        foreach (var (name, value) in SummaryHeader.Of(summary))
        {
            Line(name + ": " + value);
        }

        foreach (var notice in SummaryHeader.Notices(summary))
        {
            Line();
            Line(notice);
        }

        Heading(SummaryTexts.WeNeed.In(language));
        if (summary.Needs.Count == 0)
        {
            Line(SummaryTexts.NothingNeeded.In(language));
        }

        foreach (var need in summary.Needs)
        {
            Line("* " + need.What + (need.Due is null ? string.Empty : " – " + need.Due));
            if (need.Consequence is not null)
            {
                Line("  " + SummaryTexts.Otherwise.In(language, need.Consequence));
            }
        }

        foreach (var system in summary.Systems)
        {
            Heading(SummaryTexts.WeFound.In(language) + ": " + system.Name);
            if (system.Volume is not null)
            {
                Line(SummaryTexts.Volume.In(language) + ": " + system.Volume);
            }

            foreach (var finding in system.Found)
            {
                Line("* [" + finding.Urgency + "] " + finding.Text);
            }

            if (system.Found.Count == 0)
            {
                Line(SummaryTexts.NothingFound.In(language));
            }

            foreach (var seen in system.Seen)
            {
                Line("* " + SummaryTexts.Seen.In(language, seen));
            }

            Line();
            foreach (var result in system.Results)
            {
                Line($"{result.Test}: {result.Result}"
                    + (result.Range.Length == 0 ? string.Empty : $" ({SummaryTexts.Range.In(language)}: {result.Range})")
                    + " – " + result.Standing);
            }

            if (system.Figures.Count > 0)
            {
                Line();
                Line(SummaryTexts.Worked.In(language) + ":");
                foreach (var figure in system.Figures)
                {
                    Line(figure.Name + ": " + figure.Value);
                }

                Line(SummaryTexts.WorkedNote.In(language));
            }

            Heading(SummaryTexts.WeDid.In(language) + ": " + system.Name);
            foreach (var done in system.Done.DefaultIfEmpty(SummaryTexts.NothingDone.In(language)))
            {
                Line("* " + done);
            }
        }

        Line();
        foreach (var caution in summary.Cautions)
        {
            Line("! " + caution);
        }

        Line();
        foreach (var signature in summary.Signatures)
        {
            Line(signature);
        }

        Line(SummaryTexts.Reference.In(language, summary.VisitId, summary.Version));
        return text.ToString();
    }
}
