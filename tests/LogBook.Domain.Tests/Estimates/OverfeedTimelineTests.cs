using LogBook.Domain.Estimates;

namespace LogBook.Domain.Tests.Estimates;

public class OverfeedTimelineTests
{
    // 60 L at 0.25 L/h last 240 h = 10 days; a counter that ran all of 504 h leaves 11 days.
    [Fact]
    public void Of_RanTheWholeTime_StockOverOutput()
    {
        var timeline = OverfeedTimeline.Of(504, 504, new Estimate(60, "L", 1.5), new Estimate(0.25, "L/h", 0.025), foundForcedOn: true);

        Assert.Equal(10, timeline.Overfed.Value, 1e-9);
        Assert.Equal(11, timeline.Empty.Value, 1e-9);

        // Relative: 2.5 % of the stock and 10 % of the output.
        Assert.Equal(10 * Math.Sqrt((0.025 * 0.025) + 0.01), timeline.Overfed.StandardUncertainty, 1e-9);
        Assert.Equal(timeline.Overfed.StandardUncertainty, timeline.Empty.StandardUncertainty, 1e-9);
    }

    [Fact]
    public void Of_RanPartAndFoundForcedOn_EndsWithTheStretch()
    {
        // 300 of 504 h: 10 days of feed, the other 60 h empty.
        var timeline = OverfeedTimeline.Of(504, 300, Estimate.Exact(60, "L"), Estimate.Exact(0.25, "L/h"), foundForcedOn: true);

        Assert.Equal(10, timeline.Overfed.Value, 1e-9);
        Assert.Equal(2.5, timeline.Empty.Value, 1e-9);
    }

    [Fact]
    public void Of_RanPartOnAutomatic_IsTakenAsEven()
    {
        // 300 of 504 h, evenly: 240 h of running take 403.2 h.
        var timeline = OverfeedTimeline.Of(504, 300, Estimate.Exact(60, "L"), Estimate.Exact(0.25, "L/h"), foundForcedOn: false);

        Assert.Equal(16.8, timeline.Overfed.Value, 1e-9);
        Assert.Equal(4.2, timeline.Empty.Value, 1e-9);
    }

    [Fact]
    public void Of_MoreStockThanTheTimeAllows_IsNeverNegative() =>
        Assert.Equal(0, OverfeedTimeline.Of(100, 100, Estimate.Exact(60, "L"), Estimate.Exact(0.25, "L/h"), true).Empty.Value, 1e-9);

    [Fact]
    public void WithWater_ClosedForm_PeakAndWashOutComeBack()
    {
        // V = 3,200 L, W = 100 L/h, F = 0.25 L/h x 1.12 kg/L: F/W (1 - exp(-7.5)) + 100 exp(-7.5); then 11 days of wash-out.
        var feed = 0.25 * 1.12e6;
        var peak = (feed / 100 * (1 - Math.Exp(-100 * 240 / 3200.0))) + (100 * Math.Exp(-100 * 240 / 3200.0));
        var left = peak * Math.Exp(-100 * 264 / 3200.0);
        var timeline = OverfeedTimeline.Of(504, 504, Estimate.Exact(60, "L"), Estimate.Exact(0.25, "L/h"), true)
            .WithWater(Estimate.Exact(3200, "L"), Estimate.Exact(100, "L/h"), Estimate.Exact(feed, "1"), 100, Estimate.Exact(left, "mg/L"));

        Assert.Equal(peak, timeline.Peak!.Value, 1e-6);
        Assert.Equal(11, timeline.WashedOut!.Value, 1e-6);
        Assert.False(timeline.IsWashedOutAtLeast);
    }

    [Fact]
    public void WithWater_NothingLeftThatTheTestCanTell_GivesTheLeastTime()
    {
        var timeline = OverfeedTimeline.Of(504, 504, Estimate.Exact(60, "L"), Estimate.Exact(0.25, "L/h"), true)
            .WithWater(Estimate.Exact(3200, "L"), Estimate.Exact(100, "L/h"), Estimate.Exact(280_000, "1"), 100, new Estimate(0, "mg/L", 1.44));

        Assert.True(timeline.IsWashedOutAtLeast);
        Assert.Equal(3200 / 100.0 * Math.Log(timeline.Peak!.Value / 1.44) / 24, timeline.WashedOut!.Value, 1e-6);
    }

    [Fact]
    public void WithWater_UncertainVolume_MakesThePeakUncertain()
    {
        // Before it levels off the peak goes as 1/V: 20 % of V is about 20 % of a short feed.
        var timeline = OverfeedTimeline.Of(10, 10, Estimate.Exact(2, "L"), Estimate.Exact(0.25, "L/h"), true)
            .WithWater(new Estimate(100_000, "L", 20_000), Estimate.Exact(1, "L/h"), Estimate.Exact(280_000, "1"), 0, null);

        Assert.InRange(timeline.Peak!.StandardUncertainty / timeline.Peak.Value, 0.19, 0.22);
    }
}
