namespace LogBook.Domain.Sites;

/// <summary>Which pump and drum stand on a day: a part that is to go in later is on file already, and is not there yet.</summary>
/// <remarks>Before every day on file the oldest part counts: something was there, and nothing else is known of it.</remarks>
public static class PartsOnDay
{
    /// <summary>The pump on an output.</summary>
    /// <param name="system">The system.</param>
    /// <param name="output">Code of the output; case does not count.</param>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>The newest that was in on the day, else the oldest; null where no pump is on the output.</returns>
    public static Pump? PumpOn(WaterSystem system, string output, DateOnly day) => Standing(system.Pumps.Where(pump => Same(pump.Output, output)), pump => pump.From, day);

    /// <summary>The drum under a code.</summary>
    /// <param name="system">The system.</param>
    /// <param name="code">Code of the drum; case does not count.</param>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>The newest that was in on the day, else the oldest; null where the code is none of the system's.</returns>
    public static Drum? DrumOn(WaterSystem system, string code, DateOnly day) => Standing(system.Drums.Where(drum => Same(drum.Code, code)), drum => drum.From, day);

    /// <summary>The meter under a code.</summary>
    /// <param name="system">The system.</param>
    /// <param name="code">Code of the meter; case does not count.</param>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>The newest that was in on the day, else the oldest; null where the code is none of the system's.</returns>
    public static Meter? MeterOn(WaterSystem system, string code, DateOnly day) => Standing(system.Meters.Where(meter => Same(meter.Code, code)), meter => meter.From, day);

    /// <summary>A system with the pumps and drums of one day only. Two pumps of their own codes on one output both stay.</summary>
    /// <param name="system">The system.</param>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>The system without what came before or comes after.</returns>
    public static WaterSystem Of(WaterSystem system, DateOnly day) => system with
    {
        Pumps =
        [
            .. system.Pumps.Where(pump => ReferenceEquals(pump, Standing(system.Pumps.Where(other => Same(other.Code, pump.Code)), other => other.From, day))
                && (IsIn(pump.From, day) || !system.Pumps.Any(other => Same(other.Output, pump.Output) && IsIn(other.From, day)))),
        ],
        Drums = [.. system.Drums.Where(drum => ReferenceEquals(drum, DrumOn(system, drum.Code, day)))],
    };

    private static T? Standing<T>(IEnumerable<T> parts, Func<T, DateOnly?> from, DateOnly day)
        where T : class
    {
        T? newest = null;
        T? oldest = null;
        foreach (var part in parts)
        {
            var since = from(part) ?? DateOnly.MinValue;
            oldest = oldest is null || since < (from(oldest) ?? DateOnly.MinValue) ? part : oldest;
            newest = since <= day && (newest is null || since > (from(newest) ?? DateOnly.MinValue)) ? part : newest;
        }

        return newest ?? oldest;
    }

    private static bool IsIn(DateOnly? from, DateOnly day) => (from ?? DateOnly.MinValue) <= day;

    private static bool Same(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
