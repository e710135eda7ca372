using LogBook.Domain.Dosing;

namespace LogBook.Domain.Estimates;

/// <summary>What happened between two visits when a pump ran too long and emptied its drum.</summary>
/// <param name="Overfed">Days from the start of the overfeed until the drum was empty.</param>
/// <param name="Empty">Days since then.</param>
/// <param name="Peak">Level in the water when it ran empty, mg/L as product; null without volume or loss.</param>
/// <param name="WashedOut">Days that the wash-out from the peak to the level found takes; null where either is not known.</param>
/// <param name="IsWashedOutAtLeast">The level found is none that the test can tell: <paramref name="WashedOut"/> is the least.</param>
/// <remarks>
/// Stock over pump output is the pump's time to empty the drum. A counter that ran the whole time tells that the overfeed began with the
/// stretch; one that ran less and was found forced on tells that it lasted until the end; otherwise the running is taken as even. Level by
/// one well-mixed volume: F/W (1 − exp(−W t/V)) while feeding (reference chapter 2, slow_feed_peak), exp(−W t/V) after it
/// (slug_remaining). First-order propagation.
/// </remarks>
public sealed record OverfeedTimeline(Estimate Overfed, Estimate Empty, Estimate? Peak, Estimate? WashedOut, bool IsWashedOutAtLeast)
{
    private const double WholeTime = 0.95;

    /// <summary>Reconstructs the stretch.</summary>
    /// <param name="elapsedHours">Length of the stretch, h, above zero.</param>
    /// <param name="hoursRun">Hours the pump's output ran, h, above zero.</param>
    /// <param name="drawn">Product drawn until the drum was empty, L, above zero.</param>
    /// <param name="litresPerHour">Output of the pump, L/h, above zero.</param>
    /// <param name="foundForcedOn">Whether the switch was found forced on at the end.</param>
    /// <returns>Days of overfeed and days of emptiness; level and wash-out are added by <see cref="WithWater"/>.</returns>
    public static OverfeedTimeline Of(double elapsedHours, double hoursRun, Estimate drawn, Estimate litresPerHour, bool foundForcedOn)
    {
        var pumpHours = drawn.Over(litresPerHour, "h");
        var whole = hoursRun >= WholeTime * elapsedHours;
        var evenly = !whole && !foundForcedOn ? elapsedHours / hoursRun : 1;
        var available = foundForcedOn && !whole ? hoursRun : elapsedHours;
        var overfed = pumpHours.Scaled(evenly / 24, "d");
        if (overfed.Value > available / 24)
        {
            overfed = new Estimate(available / 24, "d", overfed.StandardUncertainty);
        }

        return new OverfeedTimeline(overfed, Estimate.Exact(available / 24, "d").Minus(overfed), null, null, false);
    }

    /// <summary>Adds what the water says.</summary>
    /// <param name="volumeL">System volume with its uncertainty, L.</param>
    /// <param name="lossLPerHour">All liquid loss, L/h, above zero.</param>
    /// <param name="feedMgPerHour">Product fed while the pump drew, mg/h.</param>
    /// <param name="start">Level before, mg/L as product.</param>
    /// <param name="found">Level found at the end, mg/L as product, or null.</param>
    /// <returns>The timeline with peak and wash-out.</returns>
    public OverfeedTimeline WithWater(Estimate volumeL, Estimate lossLPerHour, Estimate feedMgPerHour, double start, Estimate? found)
    {
        var hours = Overfed.Scaled(24, "h");
        double PeakOf(double volume, double loss, double feed, double time) =>
            Washout.LevelAfterFeed(feed, volume, loss, time).Or(0) + Washout.LevelAfter(start, volume, loss, time).Or(0);

        var peak = Propagation.Of(PeakOf, volumeL, lossLPerHour, feedMgPerHour, hours, "mg/L");
        if (found is null || peak.Value <= 0)
        {
            return this with { Peak = peak };
        }

        // Below its own uncertainty a test tells no more than that.
        var least = Math.Max(found.Value, found.StandardUncertainty);
        if (least <= 0 || peak.Value <= least)
        {
            return this with { Peak = peak };
        }

        var washed = Propagation.Of(
            (volume, loss, level, top) => Washout.TimeAbove(top, level, volume, loss).Or(0) / 24,
            volumeL,
            lossLPerHour,
            new Estimate(least, "mg/L", found.StandardUncertainty),
            peak,
            "d");
        return this with { Peak = peak, WashedOut = washed, IsWashedOutAtLeast = found.Value < found.ExpandedUncertainty };
    }
}
