using LogBook.Domain.Cycles;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.DosePlans;

/// <summary>Bleeding down before a dose and holding the bleed shut after it.</summary>
/// <remarks>
/// One well-mixed volume; the product's own conductivity comes on top. Units free but consistent. A label's contact time rules: a hold is never
/// shortened below it by this arithmetic. Reference: 12-biocide-schedule.md.
/// </remarks>
public static class BleedAroundDose
{
    /// <summary>Water bled while the make-up refills, without evaporation, V ln((c0 − cm)/(c1 − cm)).</summary>
    /// <param name="volume">V, above zero.</param>
    /// <param name="from">c0, above <paramref name="to"/>.</param>
    /// <param name="to">c1, above the make-up.</param>
    /// <param name="makeUp">cm, not negative.</param>
    /// <returns>Volume; none for a target at or below the make-up.</returns>
    /// <remarks>Reference: 12-biocide-schedule.csv, bleed_down_volume_overflow.</remarks>
    public static Computed<double> VolumeWhileRefilling(double volume, double from, double to, double makeUp) =>
        Checked(volume, from, to, makeUp).Map(_ => volume * Math.Log((from - makeUp) / (to - makeUp)));

    /// <summary>Water drained before the refill, V (c0 − c1)/(c0 − cm); the basin limits it.</summary>
    /// <param name="volume">V, above zero.</param>
    /// <param name="from">c0.</param>
    /// <param name="to">c1.</param>
    /// <param name="makeUp">cm.</param>
    /// <returns>Volume; none for a target at or below the make-up.</returns>
    /// <remarks>Reference: 12-biocide-schedule.csv, bleed_down_volume_dump_refill.</remarks>
    public static Computed<double> VolumeBeforeRefill(double volume, double from, double to, double makeUp) =>
        Checked(volume, from, to, makeUp).Map(_ => volume * (from - to) / (from - makeUp));

    /// <summary>Conductivity after a hold of the bleed, c0 + cm E t/V when nothing else leaves.</summary>
    /// <param name="start">c0.</param>
    /// <param name="makeUp">cm.</param>
    /// <param name="evaporation">E, busy season.</param>
    /// <param name="otherLoss">Drift and leaks, which go on during the hold.</param>
    /// <param name="volume">V, above zero.</param>
    /// <param name="hold">Length of the hold, in the time unit of E.</param>
    /// <returns>Conductivity in the unit of <paramref name="start"/>.</returns>
    /// <remarks>Reference: 12-biocide-schedule.csv, bleed_hold_rise.</remarks>
    public static Computed<double> AfterHold(double start, double makeUp, double evaporation, double otherLoss, double volume, double hold) =>
        CirculatingSystem.LevelAfter(start, makeUp, evaporation, otherLoss, volume, hold);

    /// <summary>Longest hold before a limit is reached, (cmax − c0) V/(cm E) when nothing else leaves.</summary>
    /// <param name="start">c0.</param>
    /// <param name="limit">cmax, not below the start.</param>
    /// <param name="makeUp">cm.</param>
    /// <param name="evaporation">E, busy season.</param>
    /// <param name="otherLoss">Drift and leaks.</param>
    /// <param name="volume">V, above zero.</param>
    /// <returns>Time in the unit of E; none when the limit is never reached, or the start is above it.</returns>
    /// <remarks>Reference: 12-biocide-schedule.csv, bleed_hold_limit_h.</remarks>
    public static Computed<double> LongestHold(double start, double limit, double makeUp, double evaporation, double otherLoss, double volume) =>
        CirculatingSystem.TimeBetween(start, limit, makeUp, evaporation, otherLoss, volume);

    /// <summary>Level to bleed down to so that a hold stays below a limit, cmax − cm E t/V.</summary>
    /// <param name="limit">cmax.</param>
    /// <param name="makeUp">cm.</param>
    /// <param name="evaporation">E, busy season.</param>
    /// <param name="volume">V, above zero.</param>
    /// <param name="hold">Length of the hold, in the time unit of E.</param>
    /// <returns>Conductivity; none when even the make-up water would pass the limit.</returns>
    public static Computed<double> StartFor(double limit, double makeUp, double evaporation, double volume, double hold) =>
        CirculatingSystem.LevelAfter(0, makeUp, evaporation, 0, volume, hold).Then(rise => limit - rise >= makeUp
            ? Computed<double>.Of(limit - rise)
            : Computed<double>.None(DosePlanReasons.NeverReached));

    private static Computed<bool> Checked(double volume, double from, double to, double makeUp)
    {
        if (!(double.IsFinite(volume) && volume > 0 && double.IsFinite(from) && makeUp >= 0 && from >= to))
        {
            return Computed<bool>.None(DosePlanReasons.Impossible);
        }

        return to > makeUp ? Computed<bool>.Of(true) : Computed<bool>.None(DosePlanReasons.NeverReached);
    }
}
