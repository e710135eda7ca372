namespace LogBook.Benchmarks;

/// <summary>Median of paired ratios with a bootstrap interval.</summary>
/// <param name="Median">The median.</param>
/// <param name="Low">2.5 % of resampled medians lie below.</param>
/// <param name="High">2.5 % lie above.</param>
internal readonly record struct Ratio(double Median, double Low, double High)
{
    private const int Resamples = 1000;

    /// <summary>From pairs of one run, ours first.</summary>
    public static Ratio Of(IReadOnlyList<(double Ours, double Raw)> pairs)
    {
        var ratios = pairs.Select(pair => pair.Ours / pair.Raw).ToArray();
        var random = new Random(1);
        var medians = Enumerable.Range(0, Resamples).Select(_ => MedianOf([.. ratios.Select(_ => ratios[random.Next(ratios.Length)])])).Order().ToArray();
        return new Ratio(MedianOf(ratios), medians[Resamples / 40], medians[Resamples - (Resamples / 40) - 1]);
    }

    /// <summary>The median; the mean of the two in the middle of an even number.</summary>
    public static double MedianOf(double[] values)
    {
        var sorted = values.Order().ToArray();
        return (sorted[(sorted.Length - 1) / 2] + sorted[sorted.Length / 2]) / 2;
    }

    /// <inheritdoc />
    public override string ToString() => FormattableString.Invariant($"{Median:0.00} ({Low:0.00} to {High:0.00})");
}
