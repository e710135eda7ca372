using CsCheck;
using LogBook.Domain.Programmes;
using LogBook.Domain.Settings;
using LogBook.Domain.Tests.Simulation;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Settings;

public sealed class ProgrammeSettingsTests
{
    private static readonly FeedMode[] Modes =
        [FeedMode.ByMakeUpVolume, FeedMode.AlongsideBleed, FeedMode.FixedShare, FeedMode.ShareOfLastBleed, FeedMode.DosePlan, FeedMode.ByOrp, FeedMode.ByPh, FeedMode.ByResidual];

    [Fact]
    [Trait("goal", "re-entry")]
    public void Enter_AllSettingsOfAProgramme_IsThatProgramme() => Gen.Select(Gen.Int[0, 7], Gen.Int[0, 7], Gen.Double[100, 3000], Gen.Double[1, 500]).Sample((one, other, large, small) =>
    {
        var programme = new Programme
        {
            From = new DateOnly(2025, 6, 30),
            SetPointUsPerCm = large,
            DifferentialUsPerCm = small,
            BleedActs = one % 2 == 0 ? BleedActs.OnRise : BleedActs.OnFall,
            HighAlarmUsPerCm = 1.2 * large,
            LowAlarmUsPerCm = 0,
            LongestBleedMin = small,
            DisplayAverageSeconds = 5,
            PlanWeeks = 2,
            WeekOneFrom = new DateOnly(2025, 6, 16),
            Feeds = [FeedOf("D-INH", "inhibitor", Modes[one], small), FeedOf("D-B1", "biocide-1", Modes[other], small)],
        };
        var settings = ProgrammeSettings.Of(programme, SimulatedCollege.System);

        var entered = ProgrammeSettings.Enter(new Programme { From = new DateOnly(2026, 1, 1), SetPointUsPerCm = 1000, Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.FixedShare, SharePercent = 6 }] }, settings, SimulatedCollege.System);

        Assert.Equal(settings, ProgrammeSettings.Of(entered, SimulatedCollege.System));
    });

    [Fact]
    public void Enter_OtherUnitOfTheController_IsConverted() => Assert.Equal(
        1400,
        ProgrammeSettings.Enter(new Programme { From = new DateOnly(2026, 1, 1) }, [new ControllerSetting("setPointUsPerCm", SettingValue.Of(1.4), "mS/cm")], SimulatedCollege.System).SetPointUsPerCm!.Value,
        1e-9);

    private static Feed FeedOf(string drum, string output, FeedMode mode, double number) => mode switch
    {
        FeedMode.ByMakeUpVolume => new Feed { Drum = drum, Output = output, Mode = mode, EveryL = 1000, RunSeconds = number },
        FeedMode.FixedShare => new Feed { Drum = drum, Output = output, Mode = mode, CycleMin = 30, SharePercent = number },
        FeedMode.ShareOfLastBleed => new Feed { Drum = drum, Output = output, Mode = mode, SharePercent = number, LongestFeedMin = 30 },
        FeedMode.AlongsideBleed => new Feed { Drum = drum, Output = output, Mode = mode, LongestFeedMin = number },
        FeedMode.DosePlan => new Feed
        {
            Drum = drum, Output = output, Mode = mode, Weeks = [1, 2], Days = [Weekday.Tuesday, Weekday.Sunday], Starts = ["21:30", "05:00"], RunMinutes = number, HoldBleedShutMin = 240,
            BleedDownFirst = new BleedDown { Minutes = 60, ToUsPerCm = 1000 }, InhibitorMeanwhile = InhibitorMeanwhile.Skips,
        },
        _ => new Feed { Drum = drum, Output = output, Mode = mode, SetPoint = number, Differential = 2, Unit = mode == FeedMode.ByPh ? "[pH]" : "mV", Direction = FeedDirection.Down, WaitsFor = ["biocide-1", "x"] },
    };
}
