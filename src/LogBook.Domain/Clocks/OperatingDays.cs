using System.Globalization;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>Days on which a plant runs, by its seasons and known stops.</summary>
internal static class OperatingDays
{
    // A use next to nothing reaches beyond any calendar.
    private const int LongestForecastDays = 4000;

    /// <summary>Whether the plant runs on a day; a plant without a pattern runs always.</summary>
    public static bool Runs(Operation? operation, DateOnly day)
    {
        if (operation is null)
        {
            return true;
        }

        for (var i = 0; i < operation.Stops.Count; i++)
        {
            if (operation.Stops[i].From <= day && day <= operation.Stops[i].To)
            {
                return false;
            }
        }

        for (var i = 0; i < operation.Seasons.Count; i++)
        {
            if (IsIn(operation.Seasons[i], day))
            {
                return true;
            }
        }

        return operation.Seasons.Count == 0;
    }

    /// <summary>Days of running after one day up to another, which counts.</summary>
    public static int Between(Operation? operation, DateOnly after, DateOnly upTo)
    {
        if (operation is null || (operation.Stops.Count == 0 && operation.Seasons.Count == 0))
        {
            return Math.Max(0, upTo.DayNumber - after.DayNumber);
        }

        var days = 0;
        for (var day = after.AddDays(1); day <= upTo; day = day.AddDays(1))
        {
            days += Runs(operation, day) ? 1 : 0;
        }

        return days;
    }

    /// <summary>The day on which so many days of running after one are over.</summary>
    public static DateOnly After(Operation? operation, DateOnly day, int running)
    {
        if (operation is null || (operation.Stops.Count == 0 && operation.Seasons.Count == 0))
        {
            return day.AddDays(Math.Min(running, LongestForecastDays));
        }

        for (var i = 0; running > 0 && i < LongestForecastDays; i++)
        {
            day = day.AddDays(1);
            running -= Runs(operation, day) ? 1 : 0;
        }

        return day;
    }

    private static bool IsIn(Season season, DateOnly day)
    {
        var (from, to, now) = (Key(season.From), Key(season.To), (day.Month * 100) + day.Day);
        return from <= to ? now >= from && now <= to : now >= from || now <= to;
    }

    private static int Key(string monthDay) =>
        (int.Parse(monthDay.AsSpan(0, 2), CultureInfo.InvariantCulture) * 100) + int.Parse(monthDay.AsSpan(3, 2), CultureInfo.InvariantCulture);
}
