using CsCheck;
using LogBook.Domain.Cycles;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Estimates;

namespace LogBook.Domain.Tests.DosePlans;

public sealed class HoldFitsTests
{
    // TOL-1 of the demo firm: 8 m3, 51.4 m3/d evaporated, make-up 530 µS/cm, 3 cycles.
    private static readonly HoldCase Cold = new()
    {
        StartUsPerCm = 1510,
        MakeUpUsPerCm = Estimate.Exact(530, "uS/cm"),
        EvaporationLPerH = Estimate.Exact(51400 / 24.0, "L/h"),
        VolumeL = Estimate.Exact(8000, "L"),
        BleedLPerH = 3000,
        HighAlarmUsPerCm = 1812,
        FeedHours = 0.25,
        HoldHours = 4,
        LabelContactHours = 4,
        DoseMgPerL = 100,
    };

    [Fact]
    public void Of_HoldCopiedFromAnotherSite_BreaksTheAlarmAndNothingShorterThanTheLabelIsProposed()
    {
        var fit = HoldFits.Of(Cold).Value;

        Assert.True(fit.Peak.Result.Value.Value > 1812);
        Assert.InRange(fit.LongestHoldHours.Value, 1, 3);
        Assert.Equal(HoldVerdict.BleedDownFirst, fit.Verdict);
        Assert.Equal(4.0, fit.ProposedHours);
        var after = HoldFits.Of(Cold with { BleedDownToUsPerCm = fit.ProposedBleedDownUsPerCm }).Value;
        Assert.Equal(HoldVerdict.Fits, after.Verdict);
        Assert.InRange(after.Peak.Result.Value.Value, 1800, 1812);
    }

    [Theory]
    [InlineData(4)]
    [InlineData(0)]
    public void Of_AlarmBelowTheMakeUp_IsReachedAtOnce(double hold)
    {
        var fit = HoldFits.Of(Cold with { HighAlarmUsPerCm = 500, HoldHours = hold, LabelContactHours = null }).Value;

        Assert.Equal((HoldVerdict.NothingFits, 0.0), (fit.Verdict, fit.LongestHoldHours.Value));
    }

    [Fact]
    public void Of_NoAlarm_SaysThatThereIsNone() => Assert.Contains(DosePlanReasons.NoAlarm, HoldFits.Of(Cold with { HighAlarmUsPerCm = null }).Value.LongestHoldHours.Reasons);

    [Fact]
    public void Of_ValveTooSmallToBleedDown_SaysThatNothingFits()
    {
        var fit = HoldFits.Of(Cold with { BleedLPerH = 1100 }).Value;

        Assert.Equal(HoldVerdict.NothingFits, fit.Verdict);
        Assert.Null(fit.ProposedHours);
    }

    [Fact]
    public void Of_HoldShorterThanTheLabel_IsMadeLonger()
    {
        var fit = HoldFits.Of(Cold with { VolumeL = Estimate.Exact(40000, "L"), HoldHours = 2 }).Value;

        Assert.Equal((HoldVerdict.LongerNeeded, 4.0), (fit.Verdict, fit.ProposedHours!.Value));
    }

    [Fact]
    [Trait("goal", "calculators")]
    public void Of_AnyPlant_NeverProposesLessThanTheLabelsContact() =>
        Gen.Select(Gen.Double[2, 80], Gen.Double[0.2, 30], Gen.Double[0.5, 12], Gen.Double[0.5, 12], Gen.Double[1.01, 1.6], Gen.Double[0.5, 10]).Sample(
            (volume, evaporation, hold, contact, alarm, valve) =>
            {
                var fit = HoldFits.Of(Cold with
                {
                    VolumeL = Estimate.Exact(1000 * volume, "L"),
                    EvaporationLPerH = Estimate.Exact(100 * evaporation, "L/h"),
                    HoldHours = hold,
                    LabelContactHours = contact,
                    HighAlarmUsPerCm = 1510 * alarm,
                    BleedLPerH = 1000 * valve,
                });
                if (!fit.HasValue || fit.Value.ProposedHours is not { } proposed)
                {
                    return;
                }

                Assert.True(proposed >= contact, $"{proposed} h proposed, {contact} h on the label");
                var again = HoldFits.Of(Cold with
                {
                    VolumeL = Estimate.Exact(1000 * volume, "L"),
                    EvaporationLPerH = Estimate.Exact(100 * evaporation, "L/h"),
                    HoldHours = proposed,
                    LabelContactHours = contact,
                    HighAlarmUsPerCm = 1510 * alarm,
                    BleedLPerH = 1000 * valve,
                    BleedDownToUsPerCm = fit.Value.ProposedBleedDownUsPerCm,
                });

                // A proposal that breaks the alarm would be no proposal.
                Assert.True(again.HasValue);
                Assert.True(again.Value.Peak.Result.Value.Value <= (1510 * alarm) + 0.01);
            });

    [Fact]
    public void Of_VolumeUncertain_PeakSaysSo()
    {
        var fit = HoldFits.Of(Cold with { VolumeL = new Estimate(8000, "L", 1600) }).Value;

        Assert.True(fit.Peak.Result.Value.StandardUncertainty > 50);
    }

    [Fact]
    public void LongestBleed_Umb1OfTheDemoFirm_IsTwiceTheTimeDown()
    {
        // Without the under-reading of conductivity: reference/01, bleed_time_band, twice.
        var minutes = LongestBleed.Of(1690, 1529, Estimate.Exact(260, "uS/cm"), Estimate.Exact(130000 / 24.0, "L/h"), Estimate.Exact(5000, "L/h"), Estimate.Exact(65000, "L"), bend: 0);

        Assert.Equal(2 * 60 * CirculatingSystem.TimeBetween(1690, 1529, 260, 130000 / 24.0, 5000, 65000).Value, minutes.Result.Value.Value, 1e-9);
    }

    [Fact]
    public void LongestBleed_ValveTooSmall_HasNoValue() => Assert.Equal(
        CyclesReasons.NeverReached,
        Assert.Single(LongestBleed.Of(1690, 1529, Estimate.Exact(260, "uS/cm"), Estimate.Exact(5400, "L/h"), Estimate.Exact(500, "L/h"), Estimate.Exact(65000, "L")).Result.Reasons));
}
