using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Theil-Sen line: the median of all pairwise slopes, hardly moved by single outliers.</summary>
/// <param name="Slope">Unit of y per unit of x.</param>
/// <param name="Intercept">Unit of y, by <paramref name="Definition"/>.</param>
/// <param name="Definition">Which intercept.</param>
/// <param name="SlopeLow">Lower end of the slope's interval (Sen 1968, normal approximation).</param>
/// <param name="SlopeHigh">Upper end.</param>
/// <remarks>Reference: 05-probe-drift.csv, theil_sen_* (data of Sen 1968).</remarks>
public sealed record TheilSen(double Slope, double Intercept, InterceptDefinition Definition, double SlopeLow, double SlopeHigh)
{
    /// <summary>Fits a line.</summary>
    /// <param name="x">Times; pairs at one time are left out.</param>
    /// <param name="y">Values, one for each x.</param>
    /// <param name="definition">Which intercept.</param>
    /// <param name="confidence">Of the slope's interval, 0.95 by default; wide and approximate under ten points.</param>
    /// <returns>The line; none with fewer than two points or all x alike.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Confidence not between 0 and 1.</exception>
    public static Computed<TheilSen> Of(
        IReadOnlyList<double> x,
        IReadOnlyList<double> y,
        InterceptDefinition definition = InterceptDefinition.MedianOfResiduals,
        double confidence = 0.95)
    {
        if (!(confidence > 0 && confidence < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Between 0 and 1.");
        }

        if (Series.Fault(x, y, 2) is { } fault)
        {
            return Computed<TheilSen>.None(fault);
        }

        var slopes = PairSlopes(x, y);
        if (slopes.Count == 0)
        {
            return Computed<TheilSen>.None(TrendReasons.NoSpread);
        }

        var slope = Series.Median(slopes);
        var intercept = definition == InterceptDefinition.MedianOfEach
            ? Series.Median(y) - (slope * Series.Median(x))
            : Series.Median(x.Zip(y, (time, value) => value - (slope * time)));
        var (low, high) = Interval(slopes, y, confidence);
        return Computed<TheilSen>.Of(new TheilSen(slope, intercept, definition, low, high));
    }

    private static List<double> PairSlopes(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        var slopes = new List<double>(x.Count * (x.Count - 1) / 2);
        for (var i = 0; i < x.Count; i++)
        {
            for (var j = i + 1; j < x.Count; j++)
            {
                if (x[j] != x[i])
                {
                    slopes.Add((y[j] - y[i]) / (x[j] - x[i]));
                }
            }
        }

        slopes.Sort();
        return slopes;
    }

    private static (double Low, double High) Interval(List<double> slopes, IReadOnlyList<double> y, double confidence)
    {
        var reach = SpecialFunctions.NormalQuantile(0.5 + (confidence / 2)) * Math.Sqrt(Series.VarianceOfS([.. y]));
        var upper = (int)Math.Min(Math.Round((slopes.Count + reach) / 2), slopes.Count - 1);
        var lower = (int)Math.Max(Math.Round((slopes.Count - reach) / 2) - 1, 0);
        return (slopes[lower], slopes[upper]);
    }
}
