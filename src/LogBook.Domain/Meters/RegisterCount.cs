using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Meters;

/// <summary>What a register counts to, in one unit, so that a renewed meter of another unit stands on the same axis.</summary>
public static class RegisterCount
{
    /// <summary>Count of a dial.</summary>
    /// <param name="meter">The meter of the day, for its multiplier (1 where none is on file) and unit.</param>
    /// <param name="dial">Number on the dial, not negative.</param>
    /// <param name="unit">UCUM unit of volume wanted.</param>
    /// <returns>Dial times multiplier in <paramref name="unit"/>; none where the meter's unit is not a volume.</returns>
    public static Computed<double> OfDial(Meter meter, double dial, string unit) => In(meter, dial * (meter.DialMultiplier ?? 1), unit);

    /// <summary>Count of a controller's total.</summary>
    /// <param name="meter">The meter of the day, for its unit.</param>
    /// <param name="total">The total, not negative; it has no multiplier.</param>
    /// <param name="unit">UCUM unit of volume wanted.</param>
    /// <returns>The total in <paramref name="unit"/>; none where the meter's unit is not a volume.</returns>
    public static Computed<double> OfTotal(Meter meter, double total, string unit) => In(meter, total, unit);

    private static Computed<double> In(Meter meter, double count, string unit) =>
        meter.Unit == unit ? Computed<double>.Of(count) : Units.Convert(count, meter.Unit, unit);
}
