using System.Globalization;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Simulation;

/// <summary>Whether the plant runs at a local wall time.</summary>
internal static class OperationCalendar
{
    public static bool Runs(Operation? operation, DateTime local)
    {
        if (operation is null)
        {
            return true;
        }

        var day = DateOnly.FromDateTime(local);
        return InSeason(operation, day)
            && !operation.Stops.Any(s => day >= s.From && day <= s.To)
            && (operation.Week.Count == 0 || operation.Week.Any(h => Covers(h, local)));
    }

    private static bool InSeason(Operation operation, DateOnly day)
    {
        if (operation.Seasons.Count == 0)
        {
            return true;
        }

        var code = (day.Month * 100) + day.Day;
        return operation.Seasons.Any(s =>
        {
            var (from, to) = (MonthDay(s.From), MonthDay(s.To));
            return from <= to ? code >= from && code <= to : code >= from || code <= to;
        });
    }

    private static int MonthDay(string text) =>
        (int.Parse(text.AsSpan(0, 2), CultureInfo.InvariantCulture) * 100) + int.Parse(text.AsSpan(3, 2), CultureInfo.InvariantCulture);

    private static bool Covers(OperatingHours hours, DateTime local)
    {
        var (from, to) = (Minutes(hours.From), Minutes(hours.To));
        var now = (local.Hour * 60) + local.Minute;
        return to > from
            ? now >= from && now < to && On(hours, local)
            : (now >= from && On(hours, local)) || (now < to && On(hours, local.AddDays(-1)));
    }

    private static bool On(OperatingHours hours, DateTime local) =>
        hours.Days.Contains((Programmes.Weekday)(((int)local.DayOfWeek + 6) % 7));

    public static int Minutes(string text) =>
        (int.Parse(text.AsSpan(0, 2), CultureInfo.InvariantCulture) * 60) + int.Parse(text.AsSpan(3, 2), CultureInfo.InvariantCulture);
}
