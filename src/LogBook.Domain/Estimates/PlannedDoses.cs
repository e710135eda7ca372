using System.Globalization;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>Starts of a calendar dose by the programme, in local wall time.</summary>
public static class PlannedDoses
{
    /// <summary>Starts of one feed in a stretch of time.</summary>
    /// <param name="programme">Programme in force; week 1 begins on the Monday on or before its first day unless it says otherwise.</param>
    /// <param name="feed">A feed by dose plan.</param>
    /// <param name="zone">The site's zone.</param>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>Starts, UTC, in order; a wall time that a clock change skips starts when the clocks have moved, one that comes twice starts once.</returns>
    public static IReadOnlyList<DateTime> Starts(Programme programme, Feed feed, TimeZoneInfo zone, DateTime fromUtc, DateTime toUtc)
    {
        var first = DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(fromUtc, zone)).AddDays(-1);
        var last = DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(toUtc, zone));
        var starts = new List<DateTime>();
        for (var day = first; day <= last; day = day.AddDays(1))
        {
            if (!feed.Weeks.Contains(PlanCalendar.Week(programme, day)) || !feed.Days.Contains((Weekday)(((int)day.DayOfWeek + 6) % 7)))
            {
                continue;
            }

            foreach (var text in feed.Starts)
            {
                if (TimeOnly.TryParseExact(text, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time))
                {
                    starts.Add(ToUtc(day.ToDateTime(time), zone));
                }
            }
        }

        return [.. starts.Where(start => start >= fromUtc && start < toUtc).Order()];
    }

    private static DateTime ToUtc(DateTime wall, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTimeToUtc(zone.IsInvalidTime(wall) ? wall.AddHours(1) : wall, zone);
}
