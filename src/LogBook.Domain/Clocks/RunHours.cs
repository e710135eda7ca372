using System.Globalization;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>Hours of the week in which a plant circulates, by its pattern on file.</summary>
internal static class RunHours
{
    private const double StepMinutes = 10;

    /// <summary>Whether the pattern says that the plant stands at some hours of a usual week.</summary>
    public static bool HasPauses(Operation? operation) => operation is { Week.Count: > 0 } && Enumerable.Range(0, 7 * 24).Any(hour => !Runs(operation, new DateTime(2024, 1, 1, 0, 30, 0, DateTimeKind.Unspecified).AddHours(hour)));

    /// <summary>Whether the plant circulates at a local wall time; a plant without hours always does.</summary>
    public static bool Runs(Operation? operation, DateTime local)
    {
        if (operation is not { Week.Count: > 0 })
        {
            return true;
        }

        var now = (local.Hour * 60) + local.Minute;
        return operation.Week.Any(hours =>
        {
            var (from, to) = (Minutes(hours.From), Minutes(hours.To));
            return to > from
                ? now >= from && now < to && On(hours, local)
                : (now >= from && On(hours, local)) || (now < to && On(hours, local.AddDays(-1)));
        });
    }

    /// <summary>Minutes of a stretch in which the plant stands, in steps of ten minutes.</summary>
    public static double StandingMinutes(Operation? operation, TimeZoneInfo zone, DateTime fromUtc, DateTime toUtc)
    {
        var standing = 0.0;
        for (var at = fromUtc; at < toUtc; at = at.AddMinutes(StepMinutes))
        {
            var length = Math.Min(StepMinutes, (toUtc - at).TotalMinutes);
            standing += Runs(operation, TimeZoneInfo.ConvertTimeFromUtc(at.AddMinutes(length / 2), zone)) ? 0 : length;
        }

        return standing;
    }

    private static bool On(OperatingHours hours, DateTime local) => hours.Days.Contains((Weekday)(((int)local.DayOfWeek + 6) % 7));

    private static int Minutes(string time) =>
        (int.Parse(time.AsSpan(0, 2), CultureInfo.InvariantCulture) * 60) + int.Parse(time.AsSpan(3, 2), CultureInfo.InvariantCulture);
}
