namespace LogBook.Domain.Estimates;

/// <summary>How often a system is visited.</summary>
internal static class VisitIntervals
{
    private const double WhenUnknown = 28;

    /// <summary>Days between visits: as agreed, else the median of the last six gaps, else four weeks.</summary>
    public static double UsualDays(VisitFacts latest)
    {
        if (latest.History.Site.VisitEveryDays is { } agreed and > 0)
        {
            return agreed;
        }

        var gaps = latest.Back().Take(7)
            .Where(visit => visit.Previous is not null)
            .Select(visit => (visit.Visit.At - visit.Previous!.Visit.At).TotalDays)
            .Where(gap => gap >= 1)
            .ToList();
        return gaps.Count > 0 ? Statistics.Median(gaps) : WhenUnknown;
    }
}
