using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Cycles;

/// <summary>Cycles of concentration: how many times the make-up has been concentrated, C = tower / make-up = make-up volume / liquid loss.</summary>
/// <remarks>
/// Conductivity under-reads true cycles by 5 to 15 % at 5 cycles, because ions conduct less the denser they are; calcium is a check for
/// deposits, not a route. Reference: 01-cycles-and-water-balance.md, "Which ratio"; 01-ec-vs-cycles.csv.
/// </remarks>
public static class CyclesOfConcentration
{
    /// <summary>Cycles from one ion, silica or conductivity, with uncertainty; what tower and make-up share (one hand meter, one lot) cancels.</summary>
    /// <param name="tower">Recirculating water, any concentration unit or µS/cm at 25 °C.</param>
    /// <param name="makeUp">Make-up water that fed it, same unit and basis.</param>
    /// <returns>Ratio without unit; none when <paramref name="makeUp"/> is zero or less, or the units differ.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, cycles_from_ratio.</remarks>
    public static Computed<Estimate> FromRatio(Estimate tower, Estimate makeUp)
    {
        if (tower.Unit != makeUp.Unit)
        {
            return Computed<Estimate>.None(CyclesReasons.UnitsDiffer);
        }

        return makeUp.Value > 0
            ? Computed<Estimate>.Of(tower.Over(makeUp))
            : Computed<Estimate>.None(CyclesReasons.MakeUpZero);
    }

    /// <summary>Cycles from conductivity, without uncertainty.</summary>
    /// <param name="tower">Recirculating water, µS/cm at 25 °C.</param>
    /// <param name="makeUp">Make-up water, µS/cm at 25 °C, same day.</param>
    /// <returns>Ratio without unit; none when <paramref name="makeUp"/> is zero.</returns>
    /// <remarks>Reads low at high cycles. Reference: 01-cycles-and-water-balance.csv, cycles_from_ratio.</remarks>
    public static Computed<Estimate> FromConductivity(Conductivity tower, Conductivity makeUp) => FromRatio(
        Estimate.Exact(tower.MicrosiemensPerCm, "uS/cm"),
        Estimate.Exact(makeUp.MicrosiemensPerCm, "uS/cm"));

    /// <summary>Cycles from water meters, C = make-up / bleed.</summary>
    /// <param name="makeUp">Make-up of the interval, any volume unit.</param>
    /// <param name="bleed">Bleed of the same interval, same unit: metered, or hours times valve flow.</param>
    /// <returns>Ratio without unit; none when <paramref name="bleed"/> is zero or less, or the units differ.</returns>
    /// <remarks>
    /// Ignores drift and leaks, so it reads high; poor above about 6 cycles, where the bleed is a small figure.
    /// Reference: 01-cycles-and-water-balance.csv, cycles_from_meters.
    /// </remarks>
    public static Computed<Estimate> FromMeters(Estimate makeUp, Estimate bleed)
    {
        if (makeUp.Unit != bleed.Unit)
        {
            return Computed<Estimate>.None(CyclesReasons.UnitsDiffer);
        }

        return bleed.Value > 0
            ? Computed<Estimate>.Of(makeUp.Over(bleed))
            : Computed<Estimate>.None(CyclesReasons.BleedZero);
    }

    /// <summary>A blend of several make-up waters by volume.</summary>
    /// <param name="waters">Share by volume (0 to 1, adding up to one within 1e-6) and concentration or conductivity of each, one unit.</param>
    /// <returns>The volume-weighted mean; none when there are no waters, or the shares are wrong.</returns>
    /// <remarks>Exact for ions, an approximation for conductivity. Reference: 01-cycles-and-water-balance.csv, blended_makeup.</remarks>
    public static Computed<double> BlendedMakeUp(IReadOnlyCollection<(double Share, double Concentration)> waters)
    {
        var sharesAreSound = waters.Count > 0
            && waters.All(water => water.Share >= 0 && double.IsFinite(water.Concentration))
            && Math.Abs(waters.Sum(water => water.Share) - 1) <= 1e-6;
        return sharesAreSound
            ? Computed<double>.Of(waters.Sum(water => water.Share * water.Concentration))
            : Computed<double>.None(CyclesReasons.SharesWrong);
    }

    /// <summary>What conductivity cycles read at true cycles, before a system has a baseline of its own: 1 − 0.025 (C − 1).</summary>
    /// <param name="trueCycles">1 or more.</param>
    /// <returns>Conductivity ratio over true cycles, 0.70 at the least; none below one cycle.</returns>
    /// <remarks>A straight line through the measured bands. Reference: 01-ec-vs-cycles.csv, EC_ratio_over_true (0.76 to 0.95 at 5 cycles).</remarks>
    public static Computed<double> ConductivityRatioOverTrue(double trueCycles) => trueCycles >= 1 && double.IsFinite(trueCycles)
        ? Computed<double>.Of(Math.Max(0.70, 1 - (0.025 * (trueCycles - 1))))
        : Computed<double>.None(CyclesReasons.CyclesZero);
}
