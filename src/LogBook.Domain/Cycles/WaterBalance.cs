using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Cycles;

/// <summary>The steady-state water balance: make-up M = E + W, liquid loss W = B + D + L = M/C, evaporation E.</summary>
/// <remarks>
/// Plain numbers are flows or volumes in one consistent unit; those with uncertainty carry their unit. Valid at steady state; weak near one
/// cycle and with several unmetered losses. Reference: 01-cycles-and-water-balance.md.
/// </remarks>
public static class WaterBalance
{
    /// <summary>Specific heat of water used for temperature ranges, kJ/(kg·K).</summary>
    public const double SpecificHeat = 4.18;

    /// <summary>Bleed that holds the cycles, B = E/(C − 1) − (D + L).</summary>
    /// <param name="evaporation">E, not negative.</param>
    /// <param name="cycles">C, above one.</param>
    /// <param name="otherLoss">D + L (drift, leaks, overflow), not negative, same unit.</param>
    /// <returns>Bleed in the same unit. Negative means that drift and leaks alone hold the cycles down and the bleed stays shut: see <see cref="MaximumCycles"/>.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, blowdown_from_cycles.</remarks>
    public static Computed<double> Bleed(double evaporation, double cycles, double otherLoss = 0) =>
        LossFromEvaporation(evaporation, cycles).Then(loss => IsAmount(otherLoss)
            ? Computed<double>.Of(loss - otherLoss)
            : Computed<double>.None(CyclesReasons.Impossible));

    /// <summary>All liquid loss from evaporation, W = E/(C − 1).</summary>
    /// <param name="evaporation">E, not negative.</param>
    /// <param name="cycles">C, above one.</param>
    /// <returns>W in the unit of E; none at one cycle or less.</returns>
    public static Computed<double> LossFromEvaporation(double evaporation, double cycles)
    {
        if (!IsAmount(evaporation) || !double.IsFinite(cycles))
        {
            return Computed<double>.None(CyclesReasons.Impossible);
        }

        return cycles > 1 ? Computed<double>.Of(evaporation / (cycles - 1)) : Computed<double>.None(CyclesReasons.CyclesNotAboveOne);
    }

    /// <summary>Make-up as the sum of what leaves, M = E + B + D + L.</summary>
    /// <param name="evaporation">E.</param>
    /// <param name="bleed">B, same unit.</param>
    /// <param name="otherLoss">D + L, same unit.</param>
    /// <returns>M; none when a part is negative.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, makeup_from_balance.</remarks>
    public static Computed<double> MakeUp(double evaporation, double bleed, double otherLoss = 0) =>
        IsAmount(evaporation) && IsAmount(bleed) && IsAmount(otherLoss)
            ? Computed<double>.Of(evaporation + bleed + otherLoss)
            : Computed<double>.None(CyclesReasons.Impossible);

    /// <summary>Make-up from evaporation and cycles, M = E C/(C − 1).</summary>
    /// <param name="evaporation">E, not negative.</param>
    /// <param name="cycles">C, above one.</param>
    /// <returns>M in the unit of E; none at one cycle or less.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, makeup_over_evap, makeup_change_pct.</remarks>
    public static Computed<double> MakeUpFromEvaporation(double evaporation, double cycles) =>
        LossFromEvaporation(evaporation, cycles).Map(loss => loss + evaporation);

    /// <summary>Liquid loss from make-up and cycles, W = M/C.</summary>
    /// <param name="makeUp">M of an interval or as a flow.</param>
    /// <param name="cycles">C by an ion or conductivity, unit "1".</param>
    /// <returns>W in the unit of M; none at zero cycles.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, total_loss_from_meters.</remarks>
    public static Computed<Estimate> LiquidLoss(Estimate makeUp, Estimate cycles) => cycles.Value > 0
        ? Computed<Estimate>.Of(makeUp.Over(cycles, makeUp.Unit))
        : Computed<Estimate>.None(CyclesReasons.CyclesZero);

    /// <summary>Evaporation from make-up and cycles, E = M (1 − 1/C).</summary>
    /// <param name="makeUp">M of an interval or as a flow.</param>
    /// <param name="cycles">C, unit "1".</param>
    /// <returns>E in the unit of M; none below one cycle.</returns>
    public static Computed<Estimate> Evaporation(Estimate makeUp, Estimate cycles) => cycles.Value >= 1
        ? Computed<Estimate>.Of(makeUp.Times(Estimate.Exact(1).Minus(Estimate.Exact(1).Over(cycles)), makeUp.Unit))
        : Computed<Estimate>.None(CyclesReasons.CyclesNotAboveOne);

    /// <summary>Loss that the bleed does not explain, D + L = M/C − B.</summary>
    /// <param name="makeUp">M of an interval.</param>
    /// <param name="cycles">C by an ion or conductivity, unit "1"; not by meters, which assume this loss to be nothing.</param>
    /// <param name="bleed">B of the same interval: metered, or hours times valve flow, with known drains added.</param>
    /// <returns>Loss in the unit of M; negative when the bleed is over-counted or cycles are over-read. None at zero cycles or when units differ.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, unaccounted_loss.</remarks>
    public static Computed<Estimate> UnexplainedLoss(Estimate makeUp, Estimate cycles, Estimate bleed) => makeUp.Unit == bleed.Unit
        ? LiquidLoss(makeUp, cycles).Map(loss => loss.Minus(bleed))
        : Computed<Estimate>.None(CyclesReasons.UnitsDiffer);

    /// <summary>Highest cycles that drift and leaks allow, C = 1 + E/(D + L).</summary>
    /// <param name="evaporation">E, not negative.</param>
    /// <param name="otherLoss">D + L, above zero, same unit.</param>
    /// <returns>Cycles with the bleed shut; none without any loss.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, max_cycles_drift_limited.</remarks>
    public static Computed<double> MaximumCycles(double evaporation, double otherLoss)
    {
        if (!IsAmount(evaporation) || !IsAmount(otherLoss))
        {
            return Computed<double>.None(CyclesReasons.Impossible);
        }

        return otherLoss > 0 ? Computed<double>.Of(1 + (evaporation / otherLoss)) : Computed<double>.None(CyclesReasons.NoLoss);
    }

    /// <summary>Drift as a share of recirculation.</summary>
    /// <param name="recirculation">Flow, not negative.</param>
    /// <param name="percent">Drift, % of recirculation.</param>
    /// <returns>Drift in the unit of the flow.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, drift_from_percent.</remarks>
    public static Computed<double> Drift(double recirculation, double percent) => IsAmount(recirculation) && IsAmount(percent)
        ? Computed<double>.Of(recirculation * percent / 100)
        : Computed<double>.None(CyclesReasons.Impossible);

    /// <summary>Evaporation by the rule of thumb, E = 0.001 R ΔT(°F) k.</summary>
    /// <param name="recirculation">R, any flow unit.</param>
    /// <param name="rangeCelsius">Difference of hot and cold water, °C (a difference: 1 °C is 1.8 °F).</param>
    /// <param name="factor">k, 0.75 to 1.0; 0.85 usual, 1.0 is "1 % per 10 °F".</param>
    /// <returns>E in the unit of R. A yearly figure with a fixed factor can be wrong by 25 %.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, evap_rule_of_thumb.</remarks>
    public static Computed<double> EvaporationByRule(double recirculation, double rangeCelsius, double factor = 0.85) =>
        IsAmount(recirculation) && IsAmount(rangeCelsius) && IsAmount(factor)
            ? Computed<double>.Of(0.001 * recirculation * (rangeCelsius * 1.8) * factor)
            : Computed<double>.None(CyclesReasons.Impossible);

    /// <summary>Latent heat of evaporation of water, 2500.626 − 2.341 T − 0.00062 T².</summary>
    /// <param name="temperature">10 to 45 °C, within 0.01 kJ/kg of IAPWS-IF97 at the reference rows; refused outside 0 to 60 °C.</param>
    /// <returns>kJ/kg.</returns>
    /// <remarks>A quadratic fitted to IAPWS-IF97 between 15 and 45 °C. Reference: 01-cycles-and-water-balance.csv, latent_heat.</remarks>
    public static Computed<double> LatentHeat(Temperature temperature) => temperature.Celsius is >= 0 and <= 60
        ? Computed<double>.Of(2500.626 - (2.341 * temperature.Celsius) - (0.00062 * temperature.Celsius * temperature.Celsius))
        : Computed<double>.None(CyclesReasons.Impossible);

    /// <summary>Latent heat by the straight line of Stull 1988, 2501 − 2.37 T, for comparison with other calculations.</summary>
    /// <param name="temperature">Within 0.4 kJ/kg of IAPWS-IF97 from 10 to 45 °C; refused outside 0 to 60 °C.</param>
    /// <returns>kJ/kg.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, latent_heat_linear.</remarks>
    public static Computed<double> LatentHeatLinear(Temperature temperature) => temperature.Celsius is >= 0 and <= 60
        ? Computed<double>.Of(2501 - (2.37 * temperature.Celsius))
        : Computed<double>.None(CyclesReasons.Impossible);

    /// <summary>Evaporation from heat rejected, E = f Q/h.</summary>
    /// <param name="heatKw">Q, kW, not negative.</param>
    /// <param name="evaporativeShare">f, share of the heat that leaves by evaporation: near 1 in hot dry weather, 0.6 to 0.75 in cold (common practice).</param>
    /// <param name="latentHeatKJPerKg">h, kJ/kg, see <see cref="LatentHeat"/>; 2430 at 30 °C.</param>
    /// <returns>kg/h, near enough L/h.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, evap_from_heat_kW, evap_from_tower_tons, evap_from_Btu_h.</remarks>
    public static Computed<double> EvaporationFromHeat(double heatKw, double evaporativeShare = 1, double latentHeatKJPerKg = 2430) =>
        IsAmount(heatKw) && evaporativeShare is >= 0 and <= 1 && double.IsFinite(latentHeatKJPerKg) && latentHeatKJPerKg > 0
            ? Computed<double>.Of(evaporativeShare * heatKw * 3600 / latentHeatKJPerKg)
            : Computed<double>.None(CyclesReasons.Impossible);

    /// <summary>Evaporation as a share of recirculation from the temperature range, E/R = f cp ΔT/h.</summary>
    /// <param name="rangeCelsius">Difference of hot and cold water, °C.</param>
    /// <param name="evaporativeShare">f, 0 to 1.</param>
    /// <param name="latentHeatKJPerKg">h, kJ/kg.</param>
    /// <returns>Share, 0.0096 for 10 °F at f = 1.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, evap_pct_per_10F, evap_fraction_equivalent.</remarks>
    public static Computed<double> EvaporationShareOfRecirculation(double rangeCelsius, double evaporativeShare = 1, double latentHeatKJPerKg = 2430) =>
        IsAmount(rangeCelsius)
            ? EvaporationFromHeat(SpecificHeat * rangeCelsius / 3600, evaporativeShare, latentHeatKJPerKg)
            : Computed<double>.None(CyclesReasons.Impossible);

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;
}
