using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>By when the summary of a visit is promised.</summary>
/// <remarks>
/// Hours from the end of the visit, or a day of the calendar month ("by the 10th", as public tenders ask: trade.md 1.1, step 14). The
/// tenders seen do not say of which month; here it is the month after the visit's, because a visit of the 20th cannot be told by the 10th.
/// </remarks>
public static class SummaryPromise
{
    /// <summary>The moment by which the summary must be with the customer.</summary>
    /// <param name="site">The site with its promises.</param>
    /// <param name="zone">Its zone.</param>
    /// <param name="left">End of the visit, UTC.</param>
    /// <returns>UTC; the earlier where both are promised, the end of the promised day for a day of the month; null where none is promised.</returns>
    public static DateTime? DueOf(Site site, TimeZoneInfo zone, DateTime left)
    {
        DateTime? byHours = site.SummaryWithinHours is { } within ? left.AddHours(within) : null;
        DateTime? byDay = ByDay(site, zone, left) is { } day ? RunningClock.StartOf(zone, day.AddDays(1)) : null;
        return byHours is null || byDay < byHours ? byDay ?? byHours : byHours;
    }

    /// <summary>The promised day, where it is a day of the month that binds.</summary>
    /// <param name="site">The site with its promises.</param>
    /// <param name="zone">Its zone.</param>
    /// <param name="left">End of the visit, UTC.</param>
    /// <returns>The day in the site's zone; null where hours bind earlier, or nothing is promised.</returns>
    public static DateOnly? DayOf(Site site, TimeZoneInfo zone, DateTime left) =>
        ByDay(site, zone, left) is { } day && (site.SummaryWithinHours is not { } within || RunningClock.StartOf(zone, day.AddDays(1)) < left.AddHours(within)) ? day : null;

    private static DateOnly? ByDay(Site site, TimeZoneInfo zone, DateTime left)
    {
        if (site.SummaryByMonthDay is not { } day)
        {
            return null;
        }

        var next = DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(left, zone)).AddMonths(1);
        return new DateOnly(next.Year, next.Month, day);
    }
}
