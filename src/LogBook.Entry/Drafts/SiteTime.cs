using System.Globalization;
using LogBook.Domain.Exchange;

namespace LogBook.Entry.Drafts;

/// <summary>Wall time at the site, as the browser's date and time boxes write it, and moments with the site's offset.</summary>
public static class SiteTime
{
    private const string Shape = "yyyy-MM-dd'T'HH:mm";

    /// <summary>The site's zone.</summary>
    /// <param name="name">IANA name.</param>
    /// <returns>The zone; UTC where the device does not know it.</returns>
    public static TimeZoneInfo Zone(string name) => TimeZoneInfo.TryFindSystemTimeZoneById(name, out var zone) ? zone : TimeZoneInfo.Utc;

    /// <summary>A moment with the site's offset.</summary>
    /// <param name="time">Any point in time.</param>
    /// <param name="zone">Zone of the site.</param>
    /// <returns>The moment.</returns>
    public static Moment At(DateTimeOffset time, TimeZoneInfo zone) => Moment.Of(TimeZoneInfo.ConvertTime(time, zone));

    /// <summary>Wall time of a moment.</summary>
    /// <param name="moment">The moment.</param>
    /// <returns>As in 2025-03-03T09:05.</returns>
    public static string Write(Moment moment) => moment.Wall.ToString(Shape, CultureInfo.InvariantCulture);

    /// <summary>Reads a wall time.</summary>
    /// <param name="text">As the browser's box writes it, with or without seconds.</param>
    /// <param name="zone">Zone of the site.</param>
    /// <param name="notBefore">In the hour that comes twice in autumn, the first time that is not before this one is meant.</param>
    /// <returns>The moment, or null.</returns>
    public static Moment? Read(string? text, TimeZoneInfo zone, Moment? notBefore)
    {
        if (!DateTime.TryParseExact(text, [Shape, Shape + ":ss"], CultureInfo.InvariantCulture, DateTimeStyles.None, out var wall))
        {
            return null;
        }

        // A wall time that the clocks skipped in spring means the time an hour on.
        var offsets = zone.IsAmbiguousTime(wall)
            ? [.. zone.GetAmbiguousTimeOffsets(wall).OrderDescending()]
            : new[] { zone.GetUtcOffset(zone.IsInvalidTime(wall) ? wall.AddHours(1) : wall) };
        if (zone.IsInvalidTime(wall))
        {
            wall = wall.AddHours(1);
        }

        var moments = offsets.Select(offset => Moment.Of(new DateTimeOffset(wall, offset))).ToList();
        return moments.Find(m => notBefore is not { } first || m.Utc >= first.Utc) is { Text: not null } fitting ? fitting : moments[^1];
    }
}
