using CsCheck;
using LogBook.Domain.Dosing;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Tests.Dosing;

public sealed class LabelStopsTests
{
    private static readonly Product Label = new()
    {
        Code = "N-15",
        Name = "Biocide N-15",
        Kind = ProductKind.Biocide,
        LabelMaxMgPerL = 150,
        LabelMaxWeekMgPerL = 300,
        LabelGapHours = 24,
        LabelContactHours = 4,
    };

    [Theory]
    [InlineData(120, 2, 48, 4, null)]
    [InlineData(121, 1, 48, 4, LabelStopKind.Dose)]
    [InlineData(100, 3, 48, 4, LabelStopKind.Week)]
    [InlineData(100, 2, 23, 4, LabelStopKind.Gap)]
    [InlineData(100, 2, 48, 3.9, LabelStopKind.Contact)]
    public void Of_OneLineBroken_StopsThere(double dose, int doses, double gap, double hold, LabelStopKind? stopped)
    {
        // 120 mg/L in the volume on file are 150 where the volume is a fifth smaller.
        var stops = LabelStops.Of(Label, dose, 0.8, doses, gap, hold);

        Assert.Equal(stopped, stops.Count == 0 ? null : Assert.Single(stops).Kind);
        Assert.All(stops, stop => Assert.StartsWith("Stop:", stop.Says.In(Language.English), StringComparison.Ordinal));
    }

    [Fact]
    public void Of_NothingOnFile_IsNoLeave() => Assert.Empty(LabelStops.Of(new Product { Code = "X", Name = "X", Kind = ProductKind.Biocide }, 1e6));

    [Fact]
    [Trait("goal", "calculators")]
    public void Of_AnyDoseAboveTheLabel_IsStoppedWhateverTheVolume() => Gen.Select(Gen.Double[0.01, 1000], Gen.Double[0.1, 1]).Sample((dose, share) =>
        Assert.Equal(dose / share > 150 * 1.000001, LabelStops.Of(Label, dose, share).Any(stop => stop.Kind == LabelStopKind.Dose)));

    private static readonly Feed Plan = new()
    {
        Drum = "D-1", Mode = FeedMode.DosePlan, Weeks = [1, 3], Days = [Weekday.Monday, Weekday.Thursday], Starts = ["06:00"], RunMinutes = 20, HoldBleedShutMin = 240,
    };

    [Theory]
    [InlineData(FeedMode.ByMakeUpVolume)]
    [InlineData(FeedMode.AlongsideBleed)]
    [InlineData(FeedMode.FixedShare)]
    [InlineData(FeedMode.ShareOfLastBleed)]
    [InlineData(FeedMode.DosePlan)]
    [Trait("goal", "calculators")]
    public void OfFeed_AboveTheLabel_IsStoppedInEveryMode(FeedMode mode)
    {
        Assert.Contains(LabelStops.OfFeed(Label, 151, mode, Plan, 4), stop => stop.Kind == LabelStopKind.Dose);
        Assert.Empty(LabelStops.OfFeed(Label, 119, mode, Plan, 4));
    }

    [Fact]
    public void OfFeed_PlanTooDense_IsStoppedByWeekGapAndContact()
    {
        // Four doses a week of 100 / 0.8 = 125 mg/L are 500; the two of a day are 12 h apart.
        var stops = LabelStops.OfFeed(Label, 100, FeedMode.DosePlan, Plan with { Starts = ["06:00", "18:00"], HoldBleedShutMin = null }, 4);

        Assert.Equal([(LabelStopKind.Week, 500.0), (LabelStopKind.Gap, 12.0), (LabelStopKind.Contact, 0.0)], stops.Select(stop => (stop.Kind, stop.Value)));
    }

    [Fact]
    public void PlannedDoses_OverTheEndOfThePlan_AreCounted()
    {
        // Sunday of week 4 is followed by Monday of week 1.
        var planned = LogBook.Domain.DosePlans.PlannedDoses.Of(Plan with { Weeks = [1, 4], Days = [Weekday.Monday, Weekday.Sunday] }, 4);

        Assert.Equal((2, 24.0), (planned.MostInAWeek, planned.LeastGapHours!.Value));
    }
}
