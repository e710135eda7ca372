using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Meters;

/// <summary>4-20 mA signals.</summary>
/// <remarks>A loop error of 0.1 % of span is 0.016 mA. Reference: 08-meters.md.</remarks>
public static class CurrentLoop
{
    /// <summary>Value of a current, lo + (I − 4)/16 × (hi − lo).</summary>
    /// <param name="milliamps">I, mA; outside 4 to 20 the line goes on, ask <see cref="StateOf"/>.</param>
    /// <param name="at4">Value at 4 mA.</param>
    /// <param name="at20">Value at 20 mA, another.</param>
    /// <returns>Value in the unit of the range; none for a range of no width or a number that is not finite.</returns>
    /// <remarks>Reference: 08-meters.csv, scale_4_20.</remarks>
    public static Computed<double> Scale(double milliamps, double at4, double at20) =>
        double.IsFinite(milliamps) && double.IsFinite(at4) && double.IsFinite(at20) && at4 != at20
            ? Computed<double>.Of(at4 + ((milliamps - 4) / 16 * (at20 - at4)))
            : Computed<double>.None(MeterReasons.Impossible);

    /// <summary>Current that a value should give, 4 + 16 (value − lo)/(hi − lo).</summary>
    /// <param name="value">Value in the unit of the range.</param>
    /// <param name="at4">Value at 4 mA.</param>
    /// <param name="at20">Value at 20 mA, another.</param>
    /// <returns>mA; none for a range of no width.</returns>
    public static Computed<double> MilliampsOf(double value, double at4, double at20) =>
        double.IsFinite(value) && double.IsFinite(at4) && double.IsFinite(at20) && at4 != at20
            ? Computed<double>.Of(4 + (16 * (value - at4) / (at20 - at4)))
            : Computed<double>.None(MeterReasons.Impossible);

    /// <summary>State of a current by NAMUR NE43.</summary>
    /// <param name="milliamps">mA.</param>
    /// <returns>The state; not a number is a fault.</returns>
    /// <remarks>Reference: 08-meters.csv, ne43_state.</remarks>
    public static LoopState StateOf(double milliamps) => milliamps switch
    {
        >= 4 and <= 20 => LoopState.Valid,
        >= 3.8 and < 4 => LoopState.ValidSaturatedLow,
        > 20 and <= 20.5 => LoopState.ValidSaturatedHigh,
        >= 3.6 and < 3.8 or > 20.5 and <= 21 => LoopState.Indeterminate,
        _ => LoopState.Fault,
    };
}
