using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Probes;

/// <summary>An as-found error and its two parts, % of the reference.</summary>
/// <param name="AsFound">Before anything was touched.</param>
/// <param name="Fouling">What cleaning removed, same sign as the error it made.</param>
/// <param name="Calibration">What was left after cleaning.</param>
public sealed record ProbeErrorSplit(Estimate AsFound, Estimate Fouling, Estimate Calibration)
{
    /// <summary>Share of the error that cleaning removed.</summary>
    /// <returns>1 when all of it went, above 1 when cleaning turned its sign, below 0 when it grew; none without an error.</returns>
    public Computed<double> ShareRemoved() => AsFound.Value == 0
        ? Computed<double>.None(ProbeReasons.NoError)
        : Computed<double>.Of(Fouling.Value / AsFound.Value);
}
