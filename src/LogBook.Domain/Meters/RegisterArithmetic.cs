using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Meters;

/// <summary>Arithmetic of a register that counts to 10^digits and begins again.</summary>
/// <remarks>Fixed (painted) zeros are not digits. Two rollovers between readings cannot be seen. Reference: 08-meters.md.</remarks>
public static class RegisterArithmetic
{
    /// <summary>Counts between two readings, (current − previous) mod 10^digits: what a single rollover would mean.</summary>
    /// <param name="previous">Earlier count, 0 to 10^digits.</param>
    /// <param name="current">Later count, 0 to 10^digits.</param>
    /// <param name="digits">Digits that count, 1 to 15.</param>
    /// <returns>Counts, never negative; none when a count does not fit the register.</returns>
    /// <remarks>Whether it was a rollover is decided by <see cref="RolloverJudge"/>. Reference: 08-meters.csv, meter_difference.</remarks>
    public static Computed<double> Difference(double previous, double current, int digits)
    {
        if (digits is < 1 or > 15)
        {
            return Computed<double>.None(MeterReasons.Impossible);
        }

        var size = Math.Pow(10, digits);
        if (!(previous >= 0 && previous < size && current >= 0 && current < size))
        {
            return Computed<double>.None(MeterReasons.BeyondRegister);
        }

        return Computed<double>.Of(current >= previous ? current - previous : size - previous + current);
    }

    /// <summary>Whether a fall looks like a reset, replacement or misread rather than a rollover.</summary>
    /// <param name="previous">Earlier count.</param>
    /// <param name="current">Later count.</param>
    /// <param name="digits">Digits that count.</param>
    /// <param name="mostCounts">Most counts that can have passed.</param>
    /// <returns>True when the count fell and a rollover would be more than that; none when a count does not fit.</returns>
    /// <remarks>Reference: 08-meters.csv, meter_reset_suspected.</remarks>
    public static Computed<bool> ResetIsSuspected(double previous, double current, int digits, double mostCounts) =>
        Difference(previous, current, digits).Map(counts => current < previous && counts > mostCounts);
}
