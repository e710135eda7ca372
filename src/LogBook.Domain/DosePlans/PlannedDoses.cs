using System.Globalization;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.DosePlans;

/// <summary>How close the doses of a feed lie by its plan, in wall time: what a label's week and gap are judged by.</summary>
/// <param name="MostInAWeek">Most starts within seven days; 0 where the plan has none.</param>
/// <param name="LeastGapHours">Shortest time from start to start, h; null where there is no start.</param>
public sealed record PlannedDoses(int MostInAWeek, double? LeastGapHours)
{
    private const double HoursOfWeek = 7 * 24;

    /// <summary>Works it out from weeks, days and starts of a feed; the plan is followed over its end into its next round.</summary>
    /// <param name="feed">The feed; no weeks means every week, no days every day. A start that is no time of day is left out.</param>
    /// <param name="planWeeks">Weeks of the plan, 1 or more; null for the usual four.</param>
    /// <returns>Doses and gap.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A plan without weeks.</exception>
    public static PlannedDoses Of(Feed feed, int? planWeeks)
    {
        var weeks = planWeeks ?? PlanCalendar.UsualWeeks;
        ArgumentOutOfRangeException.ThrowIfLessThan(weeks, 1);
        var starts = feed.Starts
            .Select(start => TimeOnly.TryParseExact(start, "HH:mm", CultureInfo.InvariantCulture, DateTimeStyles.None, out var time) ? time.ToTimeSpan().TotalHours : (double?)null)
            .OfType<double>().Distinct().ToList();
        var round = Enumerable.Range(0, weeks).Where(week => feed.Weeks.Count == 0 || feed.Weeks.Contains(week + 1))
            .SelectMany(week => Enumerable.Range(0, 7).Where(day => feed.Days.Count == 0 || feed.Days.Contains((Weekday)day)).Select(day => (7 * week) + day))
            .SelectMany(day => starts.Select(hour => (24.0 * day) + hour))
            .Order().ToList();
        if (round.Count == 0)
        {
            return new PlannedDoses(0, null);
        }

        // A week that begins late in the plan reaches into its next round, at most two rounds on for a plan of one week.
        var length = HoursOfWeek * weeks;
        List<double> all = [.. round, .. round.Select(hour => hour + length), .. round.Select(hour => hour + (2 * length))];
        return new PlannedDoses(
            round.Max(from => all.Count(hour => hour >= from && hour < from + HoursOfWeek)),
            all.Zip(all.Skip(1), (a, b) => b - a).Min());
    }
}
