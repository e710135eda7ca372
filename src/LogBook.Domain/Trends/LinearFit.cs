using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Straight line by ordinary least squares with its intervals.</summary>
/// <remarks>
/// Restart the series after each recalibration; use days from the first point, not epoch numbers. With two points there is a line and no
/// interval. Reference: 05-probe-drift.md, "Straight line"; 05-probe-drift.csv, norris_* (NIST StRD) and drift_*.
/// </remarks>
public sealed record LinearFit
{
    private LinearFit(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        Count = x.Count;
        MeanX = x.Average();
        var meanY = y.Average();
        var (sxx, sxy, residuals) = (0.0, 0.0, 0.0);
        for (var i = 0; i < x.Count; i++)
        {
            sxx += (x[i] - MeanX) * (x[i] - MeanX);
            sxy += (x[i] - MeanX) * (y[i] - meanY);
        }

        (Sxx, Slope) = (sxx, sxy / sxx);
        Intercept = meanY - (Slope * MeanX);
        for (var i = 0; i < x.Count; i++)
        {
            residuals += Square(y[i] - meanY - (Slope * (x[i] - MeanX)));
        }

        ResidualSumOfSquares = residuals;
        RegressionSumOfSquares = Slope * Slope * Sxx;
    }

    /// <summary>Number of points.</summary>
    public int Count { get; }

    /// <summary>Slope, unit of y per unit of x.</summary>
    public double Slope { get; }

    /// <summary>Value at x = 0, unit of y.</summary>
    public double Intercept { get; }

    /// <summary>Mean of x.</summary>
    public double MeanX { get; }

    /// <summary>Sum of squared deviations of x.</summary>
    public double Sxx { get; }

    /// <summary>Sum of squared residuals.</summary>
    public double ResidualSumOfSquares { get; }

    /// <summary>Sum of squares that the line explains.</summary>
    public double RegressionSumOfSquares { get; }

    /// <summary>n − 2; zero means that there are no intervals.</summary>
    public int DegreesOfFreedom => Count - 2;

    /// <summary>Share of the variance that the line explains, 0 to 1; 1 for a series without any variance.</summary>
    public double RSquared => RegressionSumOfSquares + ResidualSumOfSquares == 0
        ? 1
        : RegressionSumOfSquares / (RegressionSumOfSquares + ResidualSumOfSquares);

    /// <summary>Standard deviation of the residuals; none with two points.</summary>
    public Computed<double> ResidualDeviation => WithInterval(() => Math.Sqrt(ResidualSumOfSquares / DegreesOfFreedom));

    /// <summary>Standard error of the slope; none with two points.</summary>
    public Computed<double> SlopeStandardError => ResidualDeviation.Map(s => s / Math.Sqrt(Sxx));

    /// <summary>Standard error of the intercept; none with two points.</summary>
    public Computed<double> InterceptStandardError => ResidualDeviation.Map(s => s * Math.Sqrt((1.0 / Count) + (MeanX * MeanX / Sxx)));

    /// <summary>F statistic of the line; none with two points or when every point lies on the line.</summary>
    public Computed<double> F => ResidualDeviation.Then(s => s > 0
        ? Computed<double>.Of(RegressionSumOfSquares / (s * s))
        : Computed<double>.None(TrendReasons.TooFewPoints));

    /// <summary>Fits a line.</summary>
    /// <param name="x">Times or days from the first point; any order, two different values at least.</param>
    /// <param name="y">Values, one for each x.</param>
    /// <returns>The line; none with fewer than two points, all x alike, or a missing number.</returns>
    public static Computed<LinearFit> Of(IReadOnlyList<double> x, IReadOnlyList<double> y)
    {
        if (Series.Fault(x, y, 2) is { } fault)
        {
            return Computed<LinearFit>.None(fault);
        }

        return x.Distinct().Skip(1).Any() ? Computed<LinearFit>.Of(new LinearFit(x, y)) : Computed<LinearFit>.None(TrendReasons.NoSpread);
    }

    /// <summary>Value of the line.</summary>
    /// <param name="x">Where.</param>
    /// <returns>Unit of y.</returns>
    public double At(double x) => Intercept + (Slope * x);

    /// <summary>Half-width of the slope's confidence interval.</summary>
    /// <param name="confidence">0.95 by default.</param>
    /// <returns>Unit of the slope; none with two points.</returns>
    public Computed<double> SlopeHalfWidth(double confidence = 0.95) => SlopeStandardError.Map(error => error * Quantile(confidence));

    /// <summary>Whether the slope's interval excludes zero.</summary>
    /// <param name="confidence">0.95 by default.</param>
    /// <returns>True for a trend; none with two points.</returns>
    public Computed<bool> HasTrend(double confidence = 0.95) => SlopeHalfWidth(confidence).Map(half => Math.Abs(Slope) > half);

    /// <summary>Two-sided probability of such a slope without a trend.</summary>
    /// <returns>0 to 1; none with two points or when every point lies on the line.</returns>
    public Computed<double> SlopePValue() => SlopeStandardError.Then(error => error > 0
        ? Computed<double>.Of(StudentT.PValue(Slope / error, DegreesOfFreedom))
        : Computed<double>.None(TrendReasons.TooFewPoints));

    /// <summary>Half-width of the interval of the mean at a place.</summary>
    /// <param name="x">Where.</param>
    /// <param name="confidence">0.95 by default.</param>
    /// <returns>Unit of y; none with two points.</returns>
    public Computed<double> MeanHalfWidth(double x, double confidence = 0.95) =>
        ResidualDeviation.Map(s => Quantile(confidence) * s * Math.Sqrt(Leverage(x)));

    /// <summary>Half-width of the interval of a new value at a place.</summary>
    /// <param name="x">Where.</param>
    /// <param name="confidence">0.95 by default.</param>
    /// <returns>Unit of y; none with two points.</returns>
    public Computed<double> PredictionHalfWidth(double x, double confidence = 0.95) =>
        ResidualDeviation.Map(s => Quantile(confidence) * s * Math.Sqrt(1 + Leverage(x)));

    /// <summary>Where the line meets a limit, (limit − intercept)/slope.</summary>
    /// <param name="limit">Unit of y.</param>
    /// <returns>x, before or after the data; none for a level line.</returns>
    /// <remarks>Reference: 05-probe-drift.csv, days_to_limit.</remarks>
    public Computed<double> XAt(double limit) => Slope != 0 && double.IsFinite((limit - Intercept) / Slope)
        ? Computed<double>.Of((limit - Intercept) / Slope)
        : Computed<double>.None(TrendReasons.NeverReached);

    private static double Square(double value) => value * value;

    private double Leverage(double x) => (1.0 / Count) + (Square(x - MeanX) / Sxx);

    private double Quantile(double confidence) => StudentT.TwoSided(confidence, DegreesOfFreedom);

    private Computed<double> WithInterval(Func<double> value) =>
        DegreesOfFreedom > 0 ? Computed<double>.Of(value()) : Computed<double>.None(TrendReasons.TooFewPoints);
}
