using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Exponentially weighted moving average: sees small lasting shifts sooner than single values do.</summary>
/// <remarks>Only for values with independent errors. Reference: 05-probe-drift.csv, ewma_* (NIST/SEMATECH e-Handbook 6.3.2.4).</remarks>
public static class Ewma
{
    /// <summary>Averages, z = λ x + (1 − λ) z before, beginning at the target.</summary>
    /// <param name="values">In order.</param>
    /// <param name="target">Expected value.</param>
    /// <param name="lambda">λ, above 0, up to 1; 0.2 to 0.3 usual.</param>
    /// <returns>One average for each value; none for a weight outside its range or a missing number.</returns>
    public static Computed<IReadOnlyList<double>> Averages(IReadOnlyList<double> values, double target, double lambda)
    {
        if (Series.Fault(values, values, 1) is { } fault)
        {
            return Computed<IReadOnlyList<double>>.None(fault);
        }

        if (!IsWeight(lambda) || !double.IsFinite(target))
        {
            return Computed<IReadOnlyList<double>>.None(TrendReasons.SeriesUnsound);
        }

        var averages = new List<double>(values.Count);
        var average = target;
        foreach (var value in values)
        {
            average = (lambda * value) + ((1 - lambda) * average);
            averages.Add(average);
        }

        return Computed<IReadOnlyList<double>>.Of(averages);
    }

    /// <summary>Half-width of the limits around the target, L s √(λ/(2 − λ) (1 − (1 − λ)^2i)).</summary>
    /// <param name="deviation">s, standard deviation of one value, not negative.</param>
    /// <param name="lambda">λ, above 0, up to 1.</param>
    /// <param name="width">L, 3 usual.</param>
    /// <param name="index">i, 1 for the first value; none for the width it comes to.</param>
    /// <returns>Unit of the values; none for arguments outside their range.</returns>
    public static Computed<double> HalfWidth(double deviation, double lambda, double width = 3, int? index = null)
    {
        if (!IsWeight(lambda) || !(double.IsFinite(deviation) && deviation >= 0) || index < 1)
        {
            return Computed<double>.None(TrendReasons.SeriesUnsound);
        }

        var grown = index is { } i ? 1 - Math.Pow(1 - lambda, 2 * i) : 1;
        return Computed<double>.Of(width * deviation * Math.Sqrt(lambda / (2 - lambda) * grown));
    }

    private static bool IsWeight(double lambda) => lambda is > 0 and <= 1;
}
