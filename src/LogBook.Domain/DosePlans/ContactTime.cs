using LogBook.Domain.Outcomes;

namespace LogBook.Domain.DosePlans;

/// <summary>How long a dose acts: level times time (CT) under decay.</summary>
/// <remarks>
/// k = loss/volume + decay of the product; measure it from two readings. The contact time asked by a label is label data and rules.
/// Reference: 12-biocide-schedule.md, "CT".
/// </remarks>
public static class ContactTime
{
    /// <summary>Time until level × time comes to a target, −ln(1 − CT k/C0)/k.</summary>
    /// <param name="start">C0, above zero.</param>
    /// <param name="decay">k, 1/time, not negative.</param>
    /// <param name="levelTime">CT, level × the same time unit, not negative.</param>
    /// <returns>Time; none when the dose is gone before (CT k/C0 of one or more).</returns>
    /// <remarks>Reference: 12-biocide-schedule.csv, bleed_hold_for_CT, bleed_hold_CT_unreachable.</remarks>
    public static Computed<double> ForLevelTime(double start, double decay, double levelTime)
    {
        if (!(double.IsFinite(start) && start > 0 && double.IsFinite(decay) && decay >= 0 && double.IsFinite(levelTime) && levelTime >= 0))
        {
            return Computed<double>.None(DosePlanReasons.Impossible);
        }

        if (decay == 0)
        {
            return Computed<double>.Of(levelTime / start);
        }

        var spent = levelTime * decay / start;
        return spent < 1 ? Computed<double>.Of(-Math.Log(1 - spent) / decay) : Computed<double>.None(DosePlanReasons.NeverReached);
    }

    /// <summary>Decay from two readings, ln(C1/C2)/(t2 − t1).</summary>
    /// <param name="earlier">C1, above zero.</param>
    /// <param name="later">C2, above zero.</param>
    /// <param name="elapsed">Time between them, above zero.</param>
    /// <returns>1/h; negative when the level rose. None for a reading of zero or no time.</returns>
    public static Computed<double> DecayPerHour(double earlier, double later, TimeSpan elapsed) =>
        double.IsFinite(earlier) && earlier > 0 && double.IsFinite(later) && later > 0 && elapsed > TimeSpan.Zero
            ? Computed<double>.Of(Math.Log(earlier / later) / elapsed.TotalHours)
            : Computed<double>.None(DosePlanReasons.Impossible);
}
