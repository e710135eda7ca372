using LogBook.Domain.Estimates;

namespace LogBook.Domain.Records;

/// <summary>Straight line through one series of as-found errors, with the interval in which the next reading is expected.</summary>
/// <param name="Drift">Slope and points.</param>
/// <param name="From">First point, UTC.</param>
/// <param name="To">End of the line, UTC: the next visit for the running series, else the last point.</param>
/// <param name="FromPercent">Error on the line at its start, %.</param>
/// <param name="ToPercent">Error on the line at its end, %.</param>
/// <param name="Low">Lower end of the 95 % interval of a reading at the next visit, %; null for a series that has ended.</param>
/// <param name="High">Upper end of it.</param>
public sealed record DriftLine(ProbeDrift Drift, DateTime From, DateTime To, double FromPercent, double ToPercent, double? Low, double? High)
{
    private const double Month = 30;

    /// <summary>Slope in 30 days with its 95 % interval, %.</summary>
    public (double Slope, double Low, double High) PerMonth => (Month * Drift.SlopePerDay.Value.Value, Month * Drift.SlopeLow, Month * Drift.SlopeHigh);
}
