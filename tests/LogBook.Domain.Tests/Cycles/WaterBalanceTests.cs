using CsCheck;
using LogBook.Domain.Cycles;
using LogBook.Domain.Estimates;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Tests.Cycles;

public sealed class WaterBalanceTests
{
    private static readonly Gen<double> Amount = Gen.Double[1, 1e5];
    private static readonly Gen<double> CyclesAboveOne = Gen.Double[1.1, 12];

    [Fact]
    public void Balance_AnyEvaporationAndCycles_Closes() => Gen.Select(Amount, CyclesAboveOne).Sample((evaporation, cycles) =>
    {
        var makeUp = WaterBalance.MakeUpFromEvaporation(evaporation, cycles).Value;
        var bleed = WaterBalance.Bleed(evaporation, cycles).Value;

        Assert.Equal(1, (evaporation + bleed) / makeUp, 1e-12);
        Assert.Equal(1, makeUp / bleed / cycles, 1e-12);
    });

    [Fact]
    public void LiquidLossAndEvaporation_OfOneMakeUp_AddUpToIt() => Gen.Select(Amount, CyclesAboveOne).Sample((volume, cycles) =>
    {
        var makeUp = Estimate.Exact(volume, "L");
        var c = Estimate.Exact(cycles);

        var sum = WaterBalance.LiquidLoss(makeUp, c).Value.Plus(WaterBalance.Evaporation(makeUp, c).Value);

        Assert.Equal(1, sum.Value / volume, 1e-12);
    });

    [Fact]
    public void LevelAfter_InTwoSteps_EqualsOneStep() => Gen.Select(Amount, Amount, Gen.Double[0, 1000], Gen.Double[0, 50]).Sample((start, makeUp, loss, hours) =>
    {
        double After(double from, double time) => CirculatingSystem.LevelAfter(from, makeUp, 1500, loss, 10_000, time).Value;

        Assert.Equal(1, After(After(start, hours / 3), hours * 2 / 3) / After(start, hours), 1e-10);
    });

    [Fact]
    public void TimeBetween_LevelAfter_IsItsInverse() => Gen.Select(Gen.Double[0.5, 200], Gen.Double[1, 40]).Sample((loss, hours) =>
    {
        var level = CirculatingSystem.LevelAfter(300, 300, 600, loss, 10_000, hours).Value;

        Assert.Equal(hours, CirculatingSystem.TimeBetween(300, level, 300, 600, loss, 10_000).Value, 1e-6);
    });

    [Fact]
    public void LevelAfter_VerySmallLoss_MeetsTheStraightLine()
    {
        var straight = CirculatingSystem.LevelAfter(300, 300, 10, 0, 10_000, 100).Value;
        var almost = CirculatingSystem.LevelAfter(300, 300, 10, 1e-9, 10_000, 100).Value;

        Assert.Equal(330, straight, 1e-9);
        Assert.Equal(straight, almost, 1e-6);
    }

    [Fact]
    public void FromRatio_OneHandMeter_ItsOwnErrorCancels()
    {
        var table = UncertaintyTable.Default;
        var meter = table.ConductivityReading("HM-1", provedWithin30Days: false);

        var cycles = CyclesOfConcentration.FromRatio(meter.On(1361, "uS/cm"), meter.On(301, "uS/cm")).Value;

        Assert.Equal(0, cycles.Common["hand-meter:HM-1"], 1e-9);
        Assert.Equal(cycles.Value * Math.Sqrt(0.0004), cycles.StandardUncertainty, 1e-9);
    }

    [Fact]
    public void FromConductivity_MakeUpZero_HasNoValue()
    {
        var cycles = CyclesOfConcentration.FromConductivity(Conductivity.FromMicrosiemensPerCm(1000), Conductivity.Zero);

        Assert.Equal(CyclesReasons.MakeUpZero, Assert.Single(cycles.Reasons));
    }

    [Fact]
    public void FromRatio_UnitsDiffer_HasNoValue() => Assert.Equal(
        CyclesReasons.UnitsDiffer,
        Assert.Single(CyclesOfConcentration.FromRatio(Estimate.Exact(1.4, "mS/cm"), Estimate.Exact(300, "uS/cm")).Reasons));

    [Fact]
    public void FromMeters_NoBleed_HasNoValue() => Assert.Equal(
        CyclesReasons.BleedZero,
        Assert.Single(CyclesOfConcentration.FromMeters(Estimate.Exact(100, "L"), Estimate.Exact(0, "L")).Reasons));

    [Theory]
    [InlineData(1)]
    [InlineData(0.5)]
    [InlineData(-2)]
    [InlineData(double.NaN)]
    public void Bleed_CyclesNotAboveOne_HasNoValue(double cycles) => Assert.False(WaterBalance.Bleed(10, cycles).HasValue);

    [Fact]
    public void SteadyLevel_NoLoss_HasNoValue() => Assert.Equal(
        CyclesReasons.NoLoss, Assert.Single(CirculatingSystem.SteadyLevel(300, 10, 0).Reasons));

    [Fact]
    public void TimeBetween_LevelBeyondSteady_HasNoValue() => Assert.Equal(
        CyclesReasons.NeverReached, Assert.Single(CirculatingSystem.TimeBetween(300, 2000, 300, 10, 10, 1000).Reasons));

    [Fact]
    public void BlendedMakeUp_SharesNotOne_HasNoValue() => Assert.False(CyclesOfConcentration.BlendedMakeUp([(0.7, 300), (0.2, 900)]).HasValue);
}
