namespace LogBook.Application.Summaries;

/// <summary>The lines above the sections, the same in every form of the summary.</summary>
public static class SummaryHeader
{
    public static IEnumerable<(string Name, string Value)> Of(VisitSummary summary)
    {
        var language = summary.Language;
        yield return (SummaryTexts.Customer.In(language), summary.Customer);
        yield return (SummaryTexts.Site.In(language), summary.SiteName + " (" + summary.SiteCode + ")");
        yield return (SummaryTexts.Date.In(language), summary.When);
        yield return (SummaryTexts.By.In(language), summary.By);
        yield return (SummaryTexts.Purpose.In(language), summary.Purpose);
    }

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

    public static string Subject(VisitSummary summary) => (summary.Version > 1 ? SummaryTexts.SubjectReissued : SummaryTexts.Subject)
        .In(summary.Language, summary.SiteName, summary.Day, summary.Version);
}
