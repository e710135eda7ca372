using LogBook.Domain.Languages;
using LogBook.Domain.Summaries;
using LogBook.Entry.Summaries;
using LogBook.Papers;

namespace LogBook.Capture.Summaries;

/// <summary>Lays a visit summary out on paper. Nothing of it may be touched before the parts that are loaded late are here.</summary>
internal static class SummaryPaper
{
    /// <summary>The summary as a PDF.</summary>
    /// <param name="summary">The summary.</param>
    /// <param name="notice">Said under the title.</param>
    /// <param name="madeAt">Moment that the file names, UTC.</param>
    public static byte[] Make(VisitSummary summary, string notice, DateTime madeAt)
    {
        var language = summary.Language;
        using var paper = new Paper(new PaperFrame
        {
            Title = SummaryHeader.Subject(summary),
            HeaderLeft = summary.Firm,
            HeaderRight = $"{summary.SiteName}, {summary.Day}",
            FooterLeft = SummaryTexts.Reference.In(language, summary.VisitId, summary.Version),
            Language = DeviceLanguages.CodeOf(language),
            Author = summary.Firm,
            MadeAt = madeAt,
        });
        paper.Heading(SummaryHeader.Subject(summary), level: 1).Small(notice).KeyValues(SummaryHeader.Of(summary).Select(pair => (pair.Name, (string?)pair.Value)));
        foreach (var said in SummaryHeader.Notices(summary))
        {
            paper.Note(said);
        }

        paper.Heading(SummaryTexts.WeNeed.In(language));
        foreach (var need in summary.Needs.Select(Words).DefaultIfEmpty(SummaryTexts.NothingNeeded.In(language)))
        {
            paper.Paragraph(need);
        }

        foreach (var system in summary.Systems)
        {
            System(paper, system, language);
        }

        paper.Note(SummaryTexts.FoundLater.In(language));
        foreach (var caution in summary.Cautions)
        {
            paper.Small(caution);
        }

        foreach (var signature in summary.Signatures)
        {
            paper.Paragraph(signature);
        }

        paper.SignatureLine(SummaryTexts.OfCustomer.In(language), SheetTexts.SignedOn.In(language));
        return paper.ToBytes();

        string Words(SummaryNeed need) => need.What
            + (need.Due is null ? "" : $" – {need.Due}")
            + (need.Consequence is null ? "" : " " + SummaryTexts.Otherwise.In(language, need.Consequence));
    }

    private static void System(Paper paper, SummarySystem system, Language language)
    {
        paper.Heading($"{SummaryTexts.WeFound.In(language)}: {system.Name}");
        if (system.Volume is not null)
        {
            paper.Small($"{SummaryTexts.Volume.In(language)}: {system.Volume}");
        }

        foreach (var seen in system.Seen)
        {
            paper.Paragraph(SummaryTexts.Seen.In(language, seen));
        }

        if (system.Results.Count > 0)
        {
            paper.Table(
                [new(SummaryTexts.Test.In(language), 3), new(SummaryTexts.Result.In(language), 2), new(SummaryTexts.Range.In(language), 2), new(SummaryTexts.Standing.In(language), 1.5)],
                system.Results.Select(result => PaperRow.Of(result.Test, result.Result, result.Range, new PaperCell(result.Standing, Bold: result.IsOutside))));
        }

        paper.Heading($"{SummaryTexts.WeDid.In(language)}: {system.Name}");
        foreach (var done in system.Done.DefaultIfEmpty(SummaryTexts.NothingDone.In(language)))
        {
            paper.Paragraph(done);
        }
    }
}
