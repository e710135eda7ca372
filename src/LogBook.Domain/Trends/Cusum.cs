using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Tabular CUSUM: adds up what lies beyond a slack on each side.</summary>
/// <param name="High">Upper sums, one for each value.</param>
/// <param name="Low">Lower sums, one for each value.</param>
/// <param name="Threshold">h, in the unit of the values.</param>
/// <remarks>
/// k = 0.5 sigma and h = 4 to 5 sigma are usual. Only for values with independent errors.
/// Reference: 05-probe-drift.csv, cusum_first_signal_high (NIST/SEMATECH e-Handbook 6.3.2.3).
/// </remarks>
public sealed record Cusum(IReadOnlyList<double> High, IReadOnlyList<double> Low, double Threshold)
{
    /// <summary>Index of the first upper sum above the threshold, from zero; null for none.</summary>
    public int? FirstHigh => FirstAbove(High);

    /// <summary>Index of the first lower sum above the threshold, from zero; null for none.</summary>
    public int? FirstLow => FirstAbove(Low);

    /// <summary>Adds up a series.</summary>
    /// <param name="values">In order.</param>
    /// <param name="target">Expected value.</param>
    /// <param name="slack">k, unit of the values, not negative.</param>
    /// <param name="threshold">h, unit of the values, above zero.</param>
    /// <returns>The sums; none for an empty series or arguments outside their range.</returns>
    public static Computed<Cusum> Of(IReadOnlyList<double> values, double target, double slack, double threshold)
    {
        if (Series.Fault(values, values, 1) is { } fault)
        {
            return Computed<Cusum>.None(fault);
        }

        if (!double.IsFinite(target) || !(slack >= 0) || !(threshold > 0))
        {
            return Computed<Cusum>.None(TrendReasons.SeriesUnsound);
        }

        var (high, low) = (new List<double>(values.Count), new List<double>(values.Count));
        var (upper, lower) = (0.0, 0.0);
        foreach (var value in values)
        {
            upper = Math.Max(0, upper + value - target - slack);
            lower = Math.Max(0, lower + target - slack - value);
            high.Add(upper);
            low.Add(lower);
        }

        return Computed<Cusum>.Of(new Cusum(high, low, threshold));
    }

    private int? FirstAbove(IReadOnlyList<double> sums)
    {
        for (var i = 0; i < sums.Count; i++)
        {
            if (sums[i] > Threshold)
            {
                return i;
            }
        }

        return null;
    }
}
