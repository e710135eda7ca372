using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Domain.Tests.Findings;

public class DosePlanRulesTests
{
    private static readonly Feed Dose = new()
    {
        Drum = "D-B1",
        Output = "biocide-1",
        Mode = FeedMode.DosePlan,
        Weeks = [1, 2, 3, 4],
        Days = [Weekday.Tuesday],
        Starts = ["14:00"],
        RunMinutes = 20,
        HoldBleedShutMin = 240,
    };

    [Fact]
    public void HoldTooLong_CopiedFromALargerSystem_IsPlanAtOnce()
    {
        // E = 19.4 × (1 − 1/4.5) = 15.1 m³ a day: 300 µS/cm × 629 L/h × 12 h / 10,000 L = 226 µS/cm, 1,232 + 226 = 1,458; 16 h pass 1,478 by 56.
        var fits = Plant(Dose with { HoldBleedShutMin = 12 * 60 }).Every(28, 3).Assess();
        var passes = Plant(Dose with { HoldBleedShutMin = 24 * 60 }).Every(28, 3).Assess().Open(FindingKinds.HoldTooLong);

        Assert.Empty(fits.All(FindingKinds.HoldTooLong));
        Assert.Equal(Severity.Plan, passes?.Severity);
        Assert.Equal("biocide-1", passes!.About?.Output);
        Assert.Equal(1232 + (300 * 15_089 / 10_000.0), passes.Evidence[0].Value!.Value, 5.0);
    }

    [Fact]
    public void HoldTooLong_JustBeyondTheAlarm_IsWatch() =>
        Assert.Equal(Severity.Watch, Plant(Dose with { HoldBleedShutMin = 14 * 60 }).Every(28, 3).Assess().Open(FindingKinds.HoldTooLong)?.Severity);

    [Fact]
    public void HoldTooLong_BleedDownFirst_BeginsLower() =>
        Assert.Empty(Plant(Dose with { HoldBleedShutMin = 24 * 60, BleedDownFirst = new BleedDown { Minutes = 600, ToUsPerCm = 900 } }).Every(28, 3).Assess().All(FindingKinds.HoldTooLong));

    [Fact]
    public void HoldTooLong_LongerHoldFoundInTheController_IsSeen()
    {
        var plant = Plant(Dose).Every(28, 3);

        plant.Visit(84, record => record with { Settings = [.. record.Settings, new SettingReading { Name = "biocide-1/holdBleedShutMin", Found = SettingValue.Of(24), Left = SettingValue.Of(24), Unit = "h" }] });

        Assert.Equal(Severity.Plan, plant.Assess().Open(FindingKinds.HoldTooLong)?.Severity);
    }

    [Fact]
    public void HoldTooLong_NeverAdvisesLessThanTheLabel()
    {
        // For conductivity 13 h would fit; the label of N-20 asks for 20.
        var plant = Plant(Dose with { Drum = "D-B2", HoldBleedShutMin = 30 * 60 });

        var found = plant.Every(28, 3).Assess().Open(FindingKinds.HoldTooLong);

        Assert.Contains("do not shorten it below that", found!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void HoldTooLong_VolumeNotOnFile_IsNotJudged()
    {
        var plant = Plant(Dose with { HoldBleedShutMin = 24 * 60 }, system => system with { VolumeL = null });

        var assessment = plant.Every(28, 3).Assess();

        Assert.Empty(assessment.All(FindingKinds.HoldTooLong));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.HoldTooLong);
    }

    [Fact]
    public void DosePlanClash_TwoBiocidesWithinADay_IsPlanAtOnce()
    {
        var found = Plant(Dose, Second(Weekday.Wednesday, "08:00")).Every(28, 1).Assess().Open(FindingKinds.DosePlanClash);

        Assert.Equal(Severity.Plan, found?.Severity);
        Assert.Equal(18, found!.Evidence[0].Value!.Value, 1e-6);
        Assert.Equal(24, found.Evidence[0].LimitLow);
        Assert.Equal("biocide-2", found.About?.Output);
    }

    [Fact]
    public void DosePlanClash_DaysApart_StaysQuiet() =>
        Assert.Empty(Plant(Dose, Second(Weekday.Friday, "08:00")).Every(28, 2).Assess().All(FindingKinds.DosePlanClash));

    [Fact]
    public void DosePlanClash_OtherWeeks_StaysQuiet() =>
        Assert.Empty(Plant(Dose with { Weeks = [1, 3] }, Second(Weekday.Tuesday, "14:00") with { Weeks = [2, 4] }).Every(28, 2).Assess().All(FindingKinds.DosePlanClash));

    [Fact]
    public void DosePlanClash_DayChangedInTheController_IsSeenAndClosesWhenPutRight()
    {
        var plant = Plant(Dose, Second(Weekday.Friday, "08:00")).Every(28, 1);
        var clash = plant.Visit(28, record => record with { Settings = [new SettingReading { Name = "biocide-2/days", Found = SettingValue.Of("wed"), Left = SettingValue.Of("fri") }] })
            .Assess().Open(FindingKinds.DosePlanClash);
        var after = plant.Visit(56).Assess().Open(FindingKinds.DosePlanClash);

        Assert.Equal(Severity.Plan, clash?.Severity);
        Assert.Null(after);
    }

    [Theory]
    [InlineData(true, 0)]
    [InlineData(false, 1)]
    public void DosePlanClash_OxidantByDosePlanInTheHold_UnlessItWaits(bool waits, int expected)
    {
        var oxidant = Second(Weekday.Tuesday, "16:00") with { Drum = "D-OX", WaitsFor = waits ? ["biocide-1"] : [] };

        Assert.Equal(expected, Plant(Dose, oxidant).Every(28, 1).Assess().All(FindingKinds.DosePlanClash).Count);
    }

    [Fact]
    public void DosePlanClash_OxidantByOrpThatDoesNotWait_IsWatchWhereNoLabelForbidsIt()
    {
        var oxidant = new Feed { Drum = "D-OX", Output = "biocide-2", Mode = FeedMode.ByOrp, SetPoint = 650, Differential = 20, Unit = "mV" };

        Assert.Equal(Severity.Watch, Plant(Dose, oxidant).Every(28, 1).Assess().Open(FindingKinds.DosePlanClash)?.Severity);
        Assert.Empty(Plant(Dose, oxidant with { WaitsFor = ["biocide-1"] }).Every(28, 1).Assess().All(FindingKinds.DosePlanClash));
    }

    [Fact]
    public void DosePlanClash_PouredByHandOnTheDayOfADose_IsPlan()
    {
        // Doses on Tuesdays 14:00; poured on Tuesday 4 February 2025 at 20:00.
        var plant = Plant(Dose).Every(28, 1);
        plant.Visit(35, record => record with { Additions = [new Addition { Product = "N-20", Amount = 1, Unit = "L", At = Moment.OfUtc(new DateTime(2025, 2, 4, 20, 0, 0, DateTimeKind.Utc)) }] });

        Assert.Equal(6, Assert.Single(plant.Assess().All(FindingKinds.DosePlanClash)).Evidence[0].Value!.Value, 1e-6);
    }

    [Fact]
    public void DosePlanClash_PouredDaysFromADose_StaysQuiet()
    {
        var plant = Plant(Dose).Every(28, 1);
        plant.Visit(35, record => record with { Additions = [new Addition { Product = "N-20", Amount = 1, Unit = "L", At = Moment.OfUtc(new DateTime(2025, 2, 7, 20, 0, 0, DateTimeKind.Utc)) }] });

        Assert.Empty(plant.Assess().All(FindingKinds.DosePlanClash));
    }

    [Fact]
    public void DoseUntreated_ClockElevenHoursSlow_DosesRunAtNight_IsPlanAtOnce()
    {
        var plant = DayPlant();
        plant.Visit(0, record => Ran(record, 10));

        // Planned 14:00 by a clock 11 h slow: 01:00.
        var found = plant.Visit(14, record => Ran(record, 10.7) with { ClockOffByMin = -660 }).Assess().Open(FindingKinds.DoseUntreated);

        Assert.Equal(Severity.Plan, found?.Severity);
        Assert.Equal(100, found!.Evidence[0].Value!.Value, 1e-6);
        Assert.Equal("biocide-1", found.About?.Output);
    }

    [Fact]
    public void DoseUntreated_ClockRight_StaysQuiet()
    {
        var plant = DayPlant();
        plant.Visit(0, record => Ran(record, 10)).Visit(14, record => Ran(record, 10.7) with { ClockOffByMin = 4 });

        Assert.Empty(plant.Assess().All(FindingKinds.DoseUntreated));
    }

    [Fact]
    public void DoseUntreated_StartMovedToEvening_HalfTheContactWithoutFlow_WatchThenPlan()
    {
        // 17:00 with four hours to act; the plant stops at 20:00: 1 h 20 min of 4 h. 18:10 leaves 2 h 30 min.
        var little = DayPlant("17:00");
        little.Visit(0, record => Ran(record, 10)).Visit(14, record => Ran(record, 10.7));
        var much = DayPlant("18:10");
        much.Visit(0, record => Ran(record, 10)).Visit(14, record => Ran(record, 10.7));
        var first = much.Assess().Open(FindingKinds.DoseUntreated);
        var second = much.Visit(28, record => Ran(record, 11.4)).Assess().Open(FindingKinds.DoseUntreated);

        Assert.Empty(little.Assess().All(FindingKinds.DoseUntreated));
        Assert.Equal(Severity.Watch, first?.Severity);
        Assert.Equal(Severity.Plan, second?.Severity);
    }

    [Fact]
    public void DoseUntreated_NothingRan_StaysQuiet()
    {
        var plant = DayPlant("01:00");
        plant.Visit(0, record => Ran(record, 10)).Visit(14, record => Ran(record, 10));

        Assert.Empty(plant.Assess().All(FindingKinds.DoseUntreated));
    }

    [Fact]
    public void DoseUntreated_RanWhileThePlantStoodAtBothVisits_IsAct()
    {
        var plant = Plant(Dose);
        plant.Visit(0, record => Ran(record, 10) with { Running = false });

        var found = plant.Visit(14, record => Ran(record, 10.7) with { Running = false }).Assess().Open(FindingKinds.DoseUntreated);

        Assert.Equal(Severity.Act, found?.Severity);
    }

    [Fact]
    public void DoseUntreated_PlantWithoutPauses_StaysQuiet()
    {
        var plant = Plant(Dose);
        plant.Visit(0, record => Ran(record, 10)).Visit(14, record => Ran(record, 10.7) with { ClockOffByMin = -660 });

        Assert.Empty(plant.Assess().All(FindingKinds.DoseUntreated));
    }

    private static VisitedSystem Ran(VisitedSystem record, double hours) => record with { HoursRun = [.. record.HoursRun, new HoursReading { Output = "biocide-1", Hours = hours }] };

    private static Feed Second(Weekday day, string start) => Dose with { Drum = "D-B2", Output = "biocide-2", Days = [day], Starts = [start] };

    private static HistoryBuilder DayPlant(string start = "14:00") => Plant(
        [Dose with { Starts = [start] }],
        system => system with
        {
            Operation = new Operation
            {
                Week = [new OperatingHours { Days = [Weekday.Monday, Weekday.Tuesday, Weekday.Wednesday, Weekday.Thursday, Weekday.Friday, Weekday.Saturday, Weekday.Sunday], From = "07:00", To = "20:00" }],
            },
        });

    private static HistoryBuilder Plant(params Feed[] feeds) => Plant(feeds, system => system);

    private static HistoryBuilder Plant(Feed feed, Func<WaterSystem, WaterSystem> change) => Plant([feed], change);

    private static HistoryBuilder Plant(Feed[] feeds, Func<WaterSystem, WaterSystem> change) => new()
    {
        System = system => change(system with
        {
            Outputs = [.. system.Outputs, new Output { Code = "biocide-1", Drives = OutputDrives.Feed }, new Output { Code = "biocide-2", Drives = OutputDrives.Feed }],
            Drums = [.. system.Drums, Drum("D-B1", "N-15"), Drum("D-B2", "N-20"), Drum("D-OX", "H-12")],
        }),
        Programme = programme => programme with { Feeds = [.. programme.Feeds, .. feeds] },
    };

    private static Drum Drum(string code, string product) => new() { Code = code, Product = product, Shape = DrumShape.VerticalCylinder, CapacityL = 25, HeightCm = 40 };
}
