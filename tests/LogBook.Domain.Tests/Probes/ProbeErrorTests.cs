using LogBook.Domain.Estimates;
using LogBook.Domain.Probes;

namespace LogBook.Domain.Tests.Probes;

public sealed class ProbeErrorTests
{
    [Fact]
    public void Percent_ProvedHandMeter_CarriesBothUncertainties()
    {
        // The college of the example visit: display 1260, hand meter 1361 µS/cm.
        var display = UncertaintyTable.Default.ControllerDisplay().On(1260, "uS/cm");
        var hand = UncertaintyTable.Default.ConductivityReading("HM-1", provedWithin30Days: true).On(1361, "uS/cm");

        var error = ProbeError.Percent(display, hand).Value;

        Assert.Equal(-7.421, error.Value, 0.001);
        Assert.Equal(92.579 * Math.Sqrt(0.0003 + 0.000225), error.StandardUncertainty, 0.001);
    }

    [Fact]
    public void Split_CleaningRemovesMost_IsFouling()
    {
        var split = ProbeError.Split(Reading(1260), Reading(1342), Reading(1361)).Value;

        Assert.Equal(split.AsFound.Value, split.Fouling.Value + split.Calibration.Value, 1e-9);
        Assert.Equal(82 / 101.0, split.ShareRemoved().Value, 1e-9);
    }

    [Fact]
    public void Percent_ReferenceZero_HasNoValue() => Assert.Equal(
        ProbeReasons.NoReference, Assert.Single(ProbeError.Percent(Reading(10), Reading(0)).Reasons));

    [Fact]
    public void TwoPoints_Alike_HasNoValue() => Assert.Equal(
        ProbeReasons.PointsAlike, Assert.Single(Calibration.TwoPoints((150, 146.9), (150, 1412)).Reasons));

    [Fact]
    public void Gain_ProbeReadsZero_HasNoValue() => Assert.Equal(ProbeReasons.ReadsZero, Assert.Single(Calibration.Gain(0, 1413).Reasons));

    private static Estimate Reading(double value) => Estimate.Exact(value, "uS/cm");
}
