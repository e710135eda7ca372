using CsCheck;
using LogBook.Domain.Trends;

namespace LogBook.Domain.Tests.Trends;

public sealed class TrendsTests
{
    [Fact]
    public void LinearFit_TwoPoints_HasALineAndNoInterval()
    {
        var fit = LinearFit.Of([0, 10], [1, 3]).Value;

        Assert.Equal(0.2, fit.Slope, 1e-12);
        Assert.Equal(TrendReasons.TooFewPoints, Assert.Single(fit.SlopeHalfWidth().Reasons));
    }

    [Fact]
    public void LinearFit_AllAtOneTime_HasNoValue() => Assert.Equal(TrendReasons.NoSpread, Assert.Single(LinearFit.Of([5, 5, 5], [1, 2, 3]).Reasons));

    [Fact]
    public void LinearFit_NotANumber_HasNoValue() => Assert.Equal(
        TrendReasons.SeriesUnsound, Assert.Single(LinearFit.Of([1, 2, 3], [1, double.NaN, 3]).Reasons));

    [Fact]
    public void LinearFit_ExactLine_IsFoundWhateverTheOrder() =>
        Gen.Select(Gen.Double[-5, 5], Gen.Double[-100, 100], Gen.Double[0, 500].Array[3, 12]).Sample((slope, intercept, days) =>
        {
            if (days.Max() - days.Min() < 1)
            {
                return;
            }

            var fit = LinearFit.Of(days, [.. days.Select(day => intercept + (slope * day))]).Value;
            var reversed = LinearFit.Of([.. days.Reverse()], [.. days.Reverse().Select(day => intercept + (slope * day))]).Value;

            Assert.Equal(slope, fit.Slope, 1e-8);
            Assert.Equal(intercept, fit.Intercept, 1e-5);
            Assert.Equal(fit.Slope, reversed.Slope, 1e-9);
        });

    [Fact]
    public void StudentT_QuantileOfPValue_IsItsInverse() => Gen.Select(Gen.Int[1, 200], Gen.Double[0.01, 0.999]).Sample((degrees, confidence) =>
        Assert.Equal(1 - confidence, StudentT.PValue(StudentT.TwoSided(confidence, degrees), degrees), 1e-10));

    [Fact]
    public void TheilSen_OneWildOutlier_HardlyMoves()
    {
        double[] days = [0, 7, 14, 21, 28, 35, 42];
        double[] errors = [0, 0.7, 1.4, 21, 2.8, 3.5, 4.2];

        var line = TheilSen.Of(days, errors).Value;

        Assert.Equal(0.1, line.Slope, 0.005);
    }

    [Fact]
    public void MannKendall_FourPointsRising_CannotReachFivePercent() => Assert.True(MannKendall.Of([1, 2, 3, 4]).Value.PValue > 0.05);

    [Fact]
    public void MannKendall_AllAlike_HasNoValue() => Assert.Equal(TrendReasons.NoSpread, Assert.Single(MannKendall.Of([3, 3, 3, 3, 3]).Reasons));

    [Fact]
    public void RunRules_PointOnTheCentre_BreaksTheRun() => Assert.Null(
        RunRules.FirstIndex([0.5, 0.4, 0.6, 0.2, 0, 0.1, 0.3, 0.7, 0.4, 0.2], RunRule.NineOnOneSide));
}
