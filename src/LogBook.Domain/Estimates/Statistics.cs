namespace LogBook.Domain.Estimates;

/// <summary>Small statistics of a system's own history.</summary>
internal static class Statistics
{
    // Factor of the mean moving range to a standard deviation (two at a time): reference chapter 5.
    private const double MovingRangeFactor = 1.128;

    public static double Median(IReadOnlyCollection<double> values) => MedianInPlace([.. values]);

    /// <summary>Median of values that may be put into order: for the many places where a copy would cost more than the sorting.</summary>
    /// <param name="sorted">At least one value; in order afterwards.</param>
    public static double MedianInPlace(Span<double> sorted)
    {
        sorted.Sort();
        var middle = sorted.Length / 2;
        return sorted.Length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /// <summary>Arithmetic mean.</summary>
    /// <param name="values">At least one value.</param>
    public static double Mean(ReadOnlySpan<double> values)
    {
        var sum = 0.0;
        foreach (var value in values)
        {
            sum += value;
        }

        return sum / values.Length;
    }

    /// <summary>Standard deviation of a sample, n − 1.</summary>
    /// <param name="values">At least two values.</param>
    public static double StandardDeviation(ReadOnlySpan<double> values)
    {
        var (mean, sum) = (Mean(values), 0.0);
        foreach (var value in values)
        {
            sum += (value - mean) * (value - mean);
        }

        return Math.Sqrt(sum / (values.Length - 1));
    }

    /// <summary>Standard deviation from the mean moving range: a slow swing (season) does not count as spread.</summary>
    public static double SpreadByMovingRange(ReadOnlySpan<double> values)
    {
        if (values.Length < 3)
        {
            return 0;
        }

        var sum = 0.0;
        for (var i = 1; i < values.Length; i++)
        {
            sum += Math.Abs(values[i - 1] - values[i]);
        }

        return sum / (values.Length - 1) / MovingRangeFactor;
    }

    /// <summary>Chance that a standard normal value lies below z (Abramowitz and Stegun 26.2.17, error below 7.5e-8).</summary>
    public static double Normal(double z)
    {
        var x = Math.Abs(z);
        var t = 1 / (1 + (0.2316419 * x));
        var tail = Math.Exp(-x * x / 2) / Math.Sqrt(2 * Math.PI)
            * t * (0.319381530 + (t * (-0.356563782 + (t * (1.781477937 + (t * (-1.821255978 + (t * 1.330274429))))))));
        return z < 0 ? tail : 1 - tail;
    }
}
