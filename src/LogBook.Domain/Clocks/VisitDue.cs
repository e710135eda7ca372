using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>When the next visit is due: by the interval since the last one, never by calendar month.</summary>
public static class VisitDue
{
    /// <summary>A visit is late when more than this share of the interval has passed over it.</summary>
    public const double LateShare = 0.25;

    /// <summary>And at least this many days.</summary>
    public const double LateDays = 2;

    // A plant that never runs again has no next visit; two years are longer than any season or agreed interval.
    private const int FarthestDays = 730;

    /// <summary>Day on which the next visit is due; days on which no system of the site runs do not count.</summary>
    /// <param name="last">Day of the last visit; null where there was none.</param>
    /// <param name="everyDays">Agreed interval in days; null where none is agreed.</param>
    /// <param name="operations">When each system of the site runs; empty means always.</param>
    /// <returns>The day, or null where last visit or interval is missing, or where the site does not run for two years.</returns>
    public static DateOnly? On(DateOnly? last, double? everyDays, IReadOnlyList<Operation?> operations)
    {
        if (last is not { } day || everyDays is not { } interval)
        {
            return null;
        }

        var wanted = (int)Math.Round(interval, MidpointRounding.AwayFromZero);
        for (var next = day.AddDays(1); next <= day.AddDays(FarthestDays); next = next.AddDays(1))
        {
            wanted -= Runs(operations, next) ? 1 : 0;
            if (wanted <= 0)
            {
                return next;
            }
        }

        return null;
    }

    /// <summary>Whether the visit is late in the sense of the exchange format.</summary>
    /// <param name="last">Day of the last visit.</param>
    /// <param name="everyDays">Agreed interval in days.</param>
    /// <param name="operations">When each system of the site runs; empty means always.</param>
    /// <param name="today">Day at the site.</param>
    /// <returns>True when more than <see cref="LateShare"/> of the interval and at least <see cref="LateDays"/> operating days over it have passed, and the site runs today.</returns>
    public static bool IsLate(DateOnly? last, double? everyDays, IReadOnlyList<Operation?> operations, DateOnly today)
    {
        if (last is not { } day || everyDays is not { } interval || !Runs(operations, today))
        {
            return false;
        }

        var passed = 0;
        for (var next = day.AddDays(1); next <= today; next = next.AddDays(1))
        {
            passed += Runs(operations, next) ? 1 : 0;
        }

        var over = passed - interval;
        return over > LateShare * interval && over >= LateDays;
    }

    private static bool Runs(IReadOnlyList<Operation?> operations, DateOnly day) =>
        operations.Count == 0 || operations.Any(operation => OperatingDays.Runs(operation, day));
}
