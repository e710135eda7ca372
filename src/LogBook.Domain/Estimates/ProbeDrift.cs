using LogBook.Domain.Outcomes;
using LogBook.Domain.Trends;

namespace LogBook.Domain.Estimates;

/// <summary>Straight line through the as-found errors of a probe since its last calibration, cleaning or renewal.</summary>
/// <param name="Points">Errors in the series.</param>
/// <param name="From">First of them, UTC.</param>
/// <param name="SlopePerDay">Slope, % a day; none below three points or when all are of one moment.</param>
/// <param name="SlopeLow">Lower end of its 95 % interval.</param>
/// <param name="SlopeHigh">Upper end of its 95 % interval.</param>
/// <param name="Forecast">Error on the line at the next visit, %, or null.</param>
/// <param name="ForecastLow">Lower end of the 95 % interval of a new reading then.</param>
/// <param name="ForecastHigh">Upper end of it.</param>
public sealed record ProbeDrift(
    int Points,
    DateTime From,
    Computed<Estimate> SlopePerDay,
    double SlopeLow,
    double SlopeHigh,
    double? Forecast,
    double? ForecastLow,
    double? ForecastHigh)
{
    /// <summary>Error on the line at the first point, %; null without a line.</summary>
    public double? AtStart { get; private init; }

    /// <summary>Standard deviation of the errors about the line, with n − 2, %; null without a line.</summary>
    public double? Scatter { get; private init; }

    /// <summary>Works out the drift.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="probe">Its comparison of the probe.</param>
    /// <returns>The drift, without a slope where the series is too short.</returns>
    /// <remarks>Reference: 05-probe-drift.md, straight line.</remarks>
    public static ProbeDrift Of(VisitFacts visit, ProbeFacts probe)
    {
        var series = ProbeSeries.Of(visit, probe);
        var from = series.Points.Count > 0 ? series.Points[0].Visit.Visit.At : visit.Visit.At;
        if (series.Points.Count < 3)
        {
            return new ProbeDrift(series.Points.Count, from, Computed<Estimate>.None(VisitReasons.TooFewPoints), 0, 0, null, null, null);
        }

        var fit = LinearFit.Of(series.Days, series.Errors);
        var half = fit.Then(line => line.SlopeHalfWidth());
        if (!half.HasValue)
        {
            return new ProbeDrift(series.Points.Count, from, Computed<Estimate>.None(VisitReasons.TooFewPoints), 0, 0, null, null, null);
        }

        var line = fit.Value;
        var next = (visit.Visit.At - from).TotalDays + VisitIntervals.UsualDays(visit);
        var forecast = line.At(next);
        var around = line.PredictionHalfWidth(next).Or(0);
        return new ProbeDrift(
            line.Count,
            from,
            Computed<Estimate>.Of(new Estimate(line.Slope, "%/d", line.SlopeStandardError.Value)),
            line.Slope - half.Value,
            line.Slope + half.Value,
            forecast,
            forecast - around,
            forecast + around)
        {
            AtStart = line.Intercept,
            Scatter = line.ResidualDeviation.HasValue ? line.ResidualDeviation.Value : null,
        };
    }
}
