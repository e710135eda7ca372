using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Dosing;

/// <summary>What becomes of a dose: washed out with the loss, broken down meanwhile.</summary>
/// <remarks>
/// Rate = W/V + k with W all liquid loss (a bleed hold takes away only the bleed) and k the decay by hydrolysis, uptake or stripping.
/// Volumes, flows and times in any consistent units. Oxidant demand makes first order optimistic.
/// Reference: 02-dosing.md, "Slug dose and washout".
/// </remarks>
public static class Washout
{
    /// <summary>Level left after a time, C0 exp(−(W/V + k) t).</summary>
    /// <param name="start">C0, not negative.</param>
    /// <param name="volume">V, above zero.</param>
    /// <param name="loss">W, not negative.</param>
    /// <param name="time">t, not negative.</param>
    /// <param name="decay">k, 1/time, not negative.</param>
    /// <returns>Level in the unit of <paramref name="start"/>.</returns>
    /// <remarks>Reference: 02-dosing.csv, slug_remaining, slug_remaining_with_decay.</remarks>
    public static Computed<double> LevelAfter(double start, double volume, double loss, double time, double decay = 0) =>
        IsAmount(start) && IsAmount(time)
            ? Rate(volume, loss, decay).Map(rate => start * Math.Exp(-rate * time))
            : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Time that a dose stays above a level, ln(C0/Cmin)/(W/V + k).</summary>
    /// <param name="start">C0, above zero.</param>
    /// <param name="least">Cmin, above zero.</param>
    /// <param name="volume">V, above zero.</param>
    /// <param name="loss">W.</param>
    /// <param name="decay">k, 1/time.</param>
    /// <returns>Time; none when the dose starts below, or nothing takes it down.</returns>
    /// <remarks>Reference: 02-dosing.csv, time_above.</remarks>
    public static Computed<double> TimeAbove(double start, double least, double volume, double loss, double decay = 0) =>
        Rate(volume, loss, decay).Then(rate => (start, least) switch
        {
            _ when !IsAmount(start) || !IsAmount(least) || least == 0 => Computed<double>.None(DosingReasons.Impossible),
            _ when start < least => Computed<double>.None(DosingReasons.NeverAbove),
            _ when rate == 0 => Computed<double>.None(DosingReasons.NeverBelow),
            _ => Computed<double>.Of(Math.Log(start / least) / rate),
        });

    /// <summary>Level times time of a dose, C0/(W/V + k) × (1 − exp(−(W/V + k) t)).</summary>
    /// <param name="start">C0, not negative.</param>
    /// <param name="volume">V, above zero.</param>
    /// <param name="loss">W.</param>
    /// <param name="time">t, not negative.</param>
    /// <param name="decay">k, 1/time.</param>
    /// <returns>Level × time; C0 t when nothing takes it down.</returns>
    /// <remarks>Reference: 02-dosing.csv, ct_integral.</remarks>
    public static Computed<double> LevelTime(double start, double volume, double loss, double time, double decay = 0) =>
        IsAmount(start) && IsAmount(time)
            ? Rate(volume, loss, decay).Map(rate => start * time * MeanOfDecay(rate * time))
            : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Level at the end of a slow feed, (F/W)(1 − exp(−W t/V)).</summary>
    /// <param name="feedPerTime">F, amount of product a time, not negative.</param>
    /// <param name="volume">V, above zero.</param>
    /// <param name="loss">W.</param>
    /// <param name="time">Length of the feed, not negative.</param>
    /// <param name="decay">k, 1/time.</param>
    /// <returns>Amount a volume, in the units of F and V; F t/V when nothing takes it down.</returns>
    /// <remarks>Reference: 02-dosing.csv, slow_feed_peak.</remarks>
    public static Computed<double> LevelAfterFeed(double feedPerTime, double volume, double loss, double time, double decay = 0) =>
        IsAmount(feedPerTime) && IsAmount(time)
            ? Rate(volume, loss, decay).Map(rate => feedPerTime * time / volume * MeanOfDecay(rate * time))
            : Computed<double>.None(DosingReasons.Impossible);

    private static Computed<double> Rate(double volume, double loss, double decay) =>
        IsAmount(volume) && volume > 0 && IsAmount(loss) && IsAmount(decay)
            ? Computed<double>.Of((loss / volume) + decay)
            : Computed<double>.None(DosingReasons.Impossible);

    // Below 1e-4 the difference from one loses digits; the series does not.
    private static double MeanOfDecay(double x) => x < 1e-4 ? 1 - (x / 2) + (x * x / 6) - (x * x * x / 24) : (1 - Math.Exp(-x)) / x;

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;
}
