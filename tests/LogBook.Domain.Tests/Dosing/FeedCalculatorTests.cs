using CsCheck;
using LogBook.Domain.Dosing;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Tests.Dosing;

public sealed class FeedCalculatorTests
{
    private static readonly FeedMode[] Modes = [FeedMode.ByMakeUpVolume, FeedMode.FixedShare, FeedMode.ShareOfLastBleed, FeedMode.DosePlan];

    // trade.md 6.2, the demo firm: pump, density, level and water of each site.
    public static TheoryData<string, FeedCase, double, double, double> Demo => new()
    {
        { "NUR-1", Volume(3, 1.12, 4.5, 1000), 100, 23.8, 0.05 },
        { "GRO-1", Volume(4, 1.12, 3.0, 1000), 90, 24.1, 0.05 },
        { "UMB-1", Volume(6, 1.15, 6.0, 1000), 90, 7.8, 0.05 },
        { "WEN-1", Volume(6, 1.15, 5.0, 10000), 80, 83, 0.6 },
        { "YAF-1", Volume(1.5, 1.12, 4.5, 1000), 100, 47.6, 0.05 },
        { "NUR-1 dose", Dose(8, 42000), 100, 30, 0.5 },
        { "UMB-1 dose", Dose(12, 65000), 100, 31, 0.5 },
        { "YAF-1 dose", Dose(3, 10000), 100, 19, 0.5 },
        { "WRE-1 share", new FeedCase { Mode = FeedMode.ShareOfLastBleed, PumpLPerH = Exact(0.4), DensityKgPerL = 1.12, BleedLPerH = Exact(1000) }, 110, 25, 0.5 },
    };

    [Theory]
    [MemberData(nameof(Demo))]
    public void SettingFor_DemoFirm_IsItsProgramme(string site, FeedCase feed, double mgPerL, double setting, double within)
    {
        var computed = FeedCalculator.SettingFor(feed, mgPerL).Setting.Result.Value.Value;

        Assert.True(Math.Abs(computed - setting) <= within, $"{site}: {computed} instead of {setting}");
    }

    [Fact]
    public void LevelAt_SettingForALevel_IsThatLevel() => Gen.Select(Gen.Int[0, 3], Gen.Double[5, 200], Gen.Double[0.3, 20]).Sample((mode, level, pump) =>
    {
        var feed = new FeedCase
        {
            Mode = Modes[mode],
            PumpLPerH = Exact(pump),
            DensityKgPerL = 1.1,
            Cycles = Estimate.Exact(4),
            EveryL = 1000,
            BleedLPerH = Exact(2000),
            BleedShareOfLoss = 0.9,
            LossLPerH = Exact(500),
            VolumeL = Estimate.Exact(20000, "L"),
        };

        var setting = FeedCalculator.SettingFor(feed, level).Setting.Result.Value.Value;

        Assert.Equal(level, FeedCalculator.LevelAt(feed, setting).Result.Value.Value, 1e-9 * level);
    });

    [Fact]
    public void LevelAt_PumpAndCyclesUncertain_UncertaintyIsTheirRootSum()
    {
        // Reference/02: fractional uncertainties add as the root of the sum of squares.
        var feed = Volume(3, 1.12, 4.5, 1000) with { PumpLPerH = new Estimate(3, "L/h", 0.09), Cycles = new Estimate(4.5, "1", 0.225) };

        var level = FeedCalculator.LevelAt(feed, 23.8).Result.Value;

        Assert.Equal(Math.Sqrt((0.03 * 0.03) + (0.05 * 0.05)), level.StandardUncertainty / level.Value, 1e-9);
        Assert.InRange(level.Value, 99.5, 100.5);
    }

    [Fact]
    public void SettingFor_UnevenPulses_SaysSo()
    {
        var uneven = FeedCalculator.SettingFor(Volume(3, 1.12, 4.5, 1050) with { LitresPerPulse = 100 }, 100);
        var even = FeedCalculator.SettingFor(Volume(3, 1.12, 4.5, 1000) with { LitresPerPulse = 100 }, 100);

        Assert.Contains("100\u00a0L", Assert.Single(uneven.Notes).In(Language.English), StringComparison.Ordinal);
        Assert.Empty(even.Notes);
    }

    [Fact]
    public void SettingFor_PartMissing_HasNoValueAndSaysWhy()
    {
        var setting = FeedCalculator.SettingFor(new FeedCase { Mode = FeedMode.ByMakeUpVolume, PumpLPerH = Exact(3) }, 100);

        Assert.Equal(DosingReasons.PartMissing, Assert.Single(setting.Setting.Result.Reasons));
    }

    [Fact]
    public void SettingFor_PumpTooSmall_SaysSo() => Assert.Contains(
        FeedCalculator.SettingFor(new FeedCase { Mode = FeedMode.FixedShare, PumpLPerH = Exact(0.01), LossLPerH = Exact(500), CycleMin = 30 }, 100).Notes,
        note => note.In(Language.English).Contains("too small", StringComparison.Ordinal));

    private static FeedCase Volume(double pump, double density, double cycles, double every) =>
        new() { Mode = FeedMode.ByMakeUpVolume, PumpLPerH = Exact(pump), DensityKgPerL = density, Cycles = Estimate.Exact(cycles), EveryL = every };

    private static FeedCase Dose(double pump, double volume) =>
        new() { Mode = FeedMode.DosePlan, PumpLPerH = Exact(pump), DensityKgPerL = 1.05, VolumeL = Estimate.Exact(volume, "L") };

    private static Estimate Exact(double value) => Estimate.Exact(value, "L/h");
}
