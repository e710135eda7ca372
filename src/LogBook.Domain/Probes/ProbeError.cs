using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Probes;

/// <summary>How far a probe is off, and how much of it was dirt.</summary>
/// <remarks>
/// Compare in the same flowing water at the same temperature basis. An error below the combined uncertainty of both is not drift.
/// Reference: 05-probe-drift.md, "Calibration".
/// </remarks>
public static class ProbeError
{
    /// <summary>Error in percent of the reference, 100 (reading − reference)/reference.</summary>
    /// <param name="reading">Probe, as found or as left.</param>
    /// <param name="reference">Hand meter or standard, same unit.</param>
    /// <returns>Percent ("%"), with what both share cancelled; none when the reference is zero or less, or the units differ.</returns>
    /// <remarks>Reference: 05-probe-drift.csv, offset_pct.</remarks>
    public static Computed<Estimate> Percent(Estimate reading, Estimate reference)
    {
        if (reading.Unit != reference.Unit)
        {
            return Computed<Estimate>.None(ProbeReasons.UnitsDiffer);
        }

        return reference.Value > 0
            ? Computed<Estimate>.Of(reading.Over(reference).Minus(Estimate.Exact(1)).Scaled(100, "%"))
            : Computed<Estimate>.None(ProbeReasons.NoReference);
    }

    /// <summary>Splits an error into fouling (what cleaning removed) and calibration (what stayed).</summary>
    /// <param name="asFound">Probe before anything was touched.</param>
    /// <param name="afterCleaning">Probe after cleaning, before any calibration.</param>
    /// <param name="reference">Reference on the same visit.</param>
    /// <returns>All in percent of the reference; none when the reference is zero or less, or units differ.</returns>
    public static Computed<ProbeErrorSplit> Split(Estimate asFound, Estimate afterCleaning, Estimate reference) =>
        Percent(asFound, reference).Then(found => Percent(afterCleaning, reference).Map(cleaned =>
            new ProbeErrorSplit(found, found.Minus(cleaned), cleaned)));
}
