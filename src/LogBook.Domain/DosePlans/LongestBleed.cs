using LogBook.Domain.Assessments;
using LogBook.Domain.Cycles;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.DosePlans;

/// <summary>Longest bleed allowed: how long the valve needs from the end of a hold down to where it shuts, times a factor.</summary>
/// <remarks>
/// Closed form of one well-mixed system (reference/01, bleed_time_band) in cycles, conductivity by <see cref="ConductivityLaw"/>. The factor of
/// two is common practice, no source: an alarm that comes at twice the usual time tells a blocked valve or a leak of make-up, not a warm day.
/// </remarks>
public static class LongestBleed
{
    /// <summary>Factor on the time the valve needs at average load.</summary>
    public const double UsualFactor = 2;

    private static readonly Text Name = new("Longest bleed allowed", "Purga más larga permitida", "Purga mais longa permitida");

    private static readonly Text Formula = new(
        "Factor × (V / W) ln((Ca − Css) / (Cb − Css)), W = valve + drift, Css = (E + W) / W; Ca cycles after a hold, Cb where the bleed shuts",
        "Factor × (V / W) ln((Ca − Css) / (Cb − Css)), W = válvula + arrastre, Css = (E + W) / W; Ca ciclos tras un cierre, Cb donde la purga cierra",
        "Fator × (V / W) ln((Ca − Css) / (Cb − Css)), W = válvula + arraste, Css = (E + W) / W; Ca ciclos após um fechamento, Cb onde a purga fecha");

    private static readonly Text Source = new(
        "Mass balance; factor of two: common practice, no source",
        "Balance de masa; factor dos: práctica común, sin fuente",
        "Balanço de massa; fator dois: prática comum, sem fonte");

    /// <summary>Works it out.</summary>
    /// <param name="fromUsPerCm">Conductivity after a hold: set point plus the rise of the hold, µS/cm.</param>
    /// <param name="toUsPerCm">Where the bleed shuts: set point minus differential, µS/cm.</param>
    /// <param name="makeUpUsPerCm">Make-up, µS/cm.</param>
    /// <param name="evaporationLPerH">Evaporation at average load, L/h.</param>
    /// <param name="valveLPerH">Flow of the open valve, L/h.</param>
    /// <param name="volumeL">Volume, L.</param>
    /// <param name="otherLossLPerH">Drift and leaks, L/h.</param>
    /// <param name="factor">At least 1.</param>
    /// <param name="bend">See <see cref="ConductivityLaw"/>.</param>
    /// <returns>Minutes; its result has no value where the valve never brings the water down.</returns>
    public static Worked Of(
        double fromUsPerCm, double toUsPerCm, Estimate makeUpUsPerCm, Estimate evaporationLPerH, Estimate valveLPerH, Estimate volumeL,
        double otherLossLPerH = 0, double factor = UsualFactor, double bend = ConductivityLaw.UsualBend)
    {
        var result = factor >= 1 && fromUsPerCm >= toUsPerCm
            ? Propagation.Of(
                x => ConductivityLaw.Of(x[0], bend).Then(law => law.CyclesAt(fromUsPerCm).Then(from => law.CyclesAt(toUsPerCm)
                    .Then(to => CirculatingSystem.TimeBetween(from, to, 1, x[1], x[2] + otherLossLPerH, x[3]).Map(hours => factor * 60 * hours)))),
                [makeUpUsPerCm, evaporationLPerH, valveLPerH, volumeL],
                "min")
            : Computed<Estimate>.None(DosePlanReasons.Impossible);
        return new Worked(result, Name, Formula, Source,
        [
            new FigureInput("bleed-from", fromUsPerCm, "uS/cm"),
            new FigureInput("bleed-to", toUsPerCm, "uS/cm"),
            Input("make-up-conductivity", makeUpUsPerCm),
            Input("evaporation", evaporationLPerH),
            Input("bleed-flow", valveLPerH),
            Input("volume", volumeL),
            new FigureInput("factor", factor, "1"),
        ]);
    }

    private static FigureInput Input(string name, Estimate estimate) => new(name, estimate.Value, estimate.Unit, estimate.StandardUncertainty);
}
