using LogBook.Domain.Exchange;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Visits;

/// <summary>Which part stood under a code on a day: a renewed part stands again with the day it went in.</summary>
internal static class SetUpParts
{
    /// <summary>The meter under a code, or null.</summary>
    public static Meter? MeterOn(WaterSystem system, string code, Moment at) =>
        On(system.Meters.Where(m => m.Code.Equals(code, StringComparison.OrdinalIgnoreCase)), m => m.From, at);

    /// <summary>The drum under a code, or null.</summary>
    public static Drum? DrumOn(WaterSystem system, string code, Moment at) =>
        On(system.Drums.Where(d => d.Code.Equals(code, StringComparison.OrdinalIgnoreCase)), d => d.From, at);

    /// <summary>The latest part that was in on the day as written; before every day, the oldest.</summary>
    private static T? On<T>(IEnumerable<T> parts, Func<T, DateOnly?> from, Moment at)
        where T : class
    {
        var day = DateOnly.FromDateTime(at.Wall);
        var byDay = parts.OrderBy(p => from(p) ?? DateOnly.MinValue).ToList();
        return byDay.LastOrDefault(p => (from(p) ?? DateOnly.MinValue) <= day) ?? byDay.FirstOrDefault();
    }
}
