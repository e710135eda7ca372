namespace LogBook.Domain.Clocks;

/// <summary>When the next visit is due: by the interval since the last one, never by calendar month.</summary>
public static class VisitDue
{
    /// <summary>A visit is late when more than this share of the interval has passed over it.</summary>
    public const double LateShare = 0.25;

    /// <summary>And at least this many days.</summary>
    public const double LateDays = 2;

    /// <summary>Day on which the next visit is due.</summary>
    /// <param name="last">Day of the last visit; null where there was none.</param>
    /// <param name="everyDays">Agreed interval in days; null where none is agreed.</param>
    /// <returns>The day, or null where last visit or interval is missing.</returns>
    public static DateOnly? On(DateOnly? last, double? everyDays) =>
        last is { } day && everyDays is { } interval ? day.AddDays((int)Math.Round(interval, MidpointRounding.AwayFromZero)) : null;

    /// <summary>Whether the visit is late in the sense of the exchange format.</summary>
    /// <param name="last">Day of the last visit.</param>
    /// <param name="everyDays">Agreed interval in days.</param>
    /// <param name="today">Day at the site.</param>
    /// <returns>True when more than <see cref="LateShare"/> of the interval and at least <see cref="LateDays"/> days over it have passed.</returns>
    public static bool IsLate(DateOnly? last, double? everyDays, DateOnly today)
    {
        if (last is not { } day || everyDays is not { } interval)
        {
            return false;
        }

        var over = today.DayNumber - day.DayNumber - interval;
        return over > LateShare * interval && over >= LateDays;
    }
}
