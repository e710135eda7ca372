using LogBook.Domain.Calculators;
using LogBook.Domain.Estimates;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Simulation;

public sealed class LookAheadFaultsTests
{
    private static readonly Site College = new() { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" };
    private static readonly DateOnly Day = new(2025, 7, 2);
    private static readonly WaterSystem Tower = SimulatedCollege.System with { FullLoadKw = 700 };

    private static readonly Programme Plan = SimulatedCollege.Programme with
    {
        MakeUp = new MakeUpWater { ConductivityUsPerCm = 300, CalciumMgPerLAsCaCO3 = 82, ChlorideMgPerL = 23 },
        LongestBleedMin = null,
    };

    private static readonly FirmSetUp Firm = new(new ExchangeDocument
    {
        Format = "logbook-exchange",
        Version = 1,
        Products =
        [
            new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DensityKgPerL = 1.12, DoseMgPerL = 100 },
            new Product { Code = "N-20", Name = "Biocide N-20", Kind = ProductKind.Biocide, DensityKgPerL = 1.03 },
            new Product { Code = "N-15", Name = "Biocide N-15", Kind = ProductKind.Biocide, DensityKgPerL = 1.05, LabelMaxMgPerL = 150, LabelMaxWeekMgPerL = 300, LabelGapHours = 24, LabelContactHours = 4 },
        ],
    });

    [Fact]
    public void Of_HealthyProgramme_FindsNothing() => Assert.Empty(Faults(Plan));

    [Fact]
    public void Of_DoseAboveTheLabel_StandsFirst()
    {
        // 40 min instead of 19: 210 mg/L in the volume on file.
        var faults = Faults(new LookAheadChange { Output = "biocide-1", RunMinutes = 40 }.On(Plan, Tower));

        Assert.Equal(LookAheadFaultKind.Label, faults[0].Kind);
        Assert.Contains("the label allows", faults[0].Says.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_PumpThatBeginsInTheFuture_DoesNotHideTheLabel()
    {
        // A tenth of the output from next month on: today's pump gives 210 mg/L.
        var system = Tower with { Pumps = [.. Tower.Pumps, Tower.Pumps[1] with { RatedLPerH = 0.3, From = Day.AddDays(30) }] };

        var faults = Faults(new LookAheadChange { Output = "biocide-1", RunMinutes = 40 }.On(Plan, system), system);

        Assert.Contains(faults, fault => fault.Kind == LookAheadFaultKind.Label && fault.Says.In(Language.English).Contains("for one dose", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_PumpMeasuredStronger_IsJudgedByWhatItGives()
    {
        var (result, _) = LookAhead.Run(Firm, College, Tower, Plan);
        var strong = new Dictionary<string, KnownNumber>(StringComparer.OrdinalIgnoreCase)
        {
            ["biocide-1"] = new(new Estimate(4.8, "L/h", 0.1), new Said(new Text("drawdown", "medición", "medição"))),
        };

        // 19 min at 4.8 L/h instead of 3: 160 mg/L on file, 200 at the low end of the volume.
        var faults = LookAheadFaults.Of(result!, Firm, College, Tower, Plan, Day, strong);

        Assert.Contains(faults, fault => fault.Kind == LookAheadFaultKind.Label && fault.Says.In(Language.English).EndsWith("Judged with the pump at 4.8\u00a0L/h (drawdown).", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_HoldShorterThanTheContact_IsStoppedByTheLabel() =>
        Assert.Equal(LookAheadFaultKind.Label, Assert.Single(Faults(new LookAheadChange { Output = "biocide-1", HoldMinutes = 120 }.On(Plan, Tower))).Kind);

    [Fact]
    public void Of_PlanWithoutHold_KeepsNothingAndIsStoppedByTheLabel()
    {
        var fault = Assert.Single(Faults(With(Plan.Feeds[1] with { HoldBleedShutMin = null })), one => one.Kind == LookAheadFaultKind.Label);

        Assert.Equal("Stop: Biocide N-15 would be kept for 0 h; the label asks for 4 h of contact. The label is the limit.", fault.Says.In(Language.English).Replace('\u00a0', ' '));
    }

    [Fact]
    public void Of_TwoFeedsOfOneOutput_TheWorstOfEachKindIsTold()
    {
        // Tuesday within the label and held, Friday above it (34 min: 179 mg/L on file, 223 at the low end of the volume) and held for 1 h.
        var faults = Faults(With(
            Plan.Feeds[1] with { Days = [Weekday.Tuesday] },
            Plan.Feeds[1] with { Days = [Weekday.Friday], RunMinutes = 34, HoldBleedShutMin = 60 }));

        var labels = faults.Where(one => one.Kind == LookAheadFaultKind.Label).Select(one => one.Says.In(Language.English).Replace('\u00a0', ' ')).ToList();
        Assert.Contains(labels, says => says.Contains("would stand at 223", StringComparison.Ordinal));
        Assert.Contains(labels, says => says.Contains("would be kept for 1 h", StringComparison.Ordinal));

        // 100 and 179 mg/L in one week: 348 at the low end, above the 300 of the label.
        Assert.Contains(labels, says => says.Contains("would add up to 348", StringComparison.Ordinal));
        Assert.Equal(3, labels.Count);
    }

    [Fact]
    public void Of_HoldTooLong_TellsThePeak()
    {
        var fault = Assert.Single(Faults(new LookAheadChange { Output = "biocide-1", HoldMinutes = 24 * 60 }.On(Plan, Tower)), one => one.Kind == LookAheadFaultKind.HoldTooLong);

        Assert.Equal("biocide-1", fault.Output);
        Assert.Equal(8, fault.Count);
    }

    [Fact]
    public void Of_PlantStopsAfterTheDose_HoursAreUntreated()
    {
        var day = Tower with { Operation = new Operation { Week = [new OperatingHours { Days = Enum.GetValues<Weekday>(), From = "06:00", To = "22:30" }] } };

        var faults = Faults(Plan, day);

        var fault = Assert.Single(faults, one => one.Kind == LookAheadFaultKind.Untreated);
        Assert.Equal(8, fault.Count);
    }

    [Fact]
    public void Of_WeekWithTheClockChange_IsNamed()
    {
        var faults = Faults(Plan, from: new DateOnly(2025, 10, 6));
        var hit = Faults(new LookAheadChange { Output = "biocide-1", Start = "01:30" }.On(Plan with { Feeds = [Plan.Feeds[0], Plan.Feeds[1] with { Days = [Weekday.Sunday, Weekday.Wednesday] }] }, Tower), from: new DateOnly(2025, 10, 6));

        Assert.Contains("26", Assert.Single(faults).Says.In(Language.English), StringComparison.Ordinal);
        Assert.Contains("comes twice", Assert.Single(hit, one => one.Kind == LookAheadFaultKind.ClockChange).Says.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_WeekLeftOut_IsLongWithout()
    {
        var faults = Faults(Plan with { Feeds = [Plan.Feeds[0], Plan.Feeds[1] with { Weeks = [1, 2] }] });

        Assert.Contains(faults, fault => fault.Kind == LookAheadFaultKind.LongWithout);
    }

    [Fact]
    public void On_WithoutBleedDown_NoDoseWaitsForIt()
    {
        var (today, _) = LookAhead.Run(Firm, College, Tower, Plan);
        var (without, _) = LookAhead.Run(Firm, College, Tower, new LookAheadChange { Output = "biocide-1", WithoutBleedDown = true }.On(Plan, Tower));

        Assert.Contains(today!.Doses, dose => dose.BleedDownFrom is not null);
        Assert.All(without!.Doses, dose => Assert.Null(dose.BleedDownFrom));
        Assert.All(without.Doses.Where(dose => dose.Started is not null), dose => Assert.Equal(dose.Due, dose.Started));
    }

    [Fact]
    public void On_SetPointChanged_AlarmsKeepTheirDistance()
    {
        var changed = new LookAheadChange { SetPointUsPerCm = 616 }.On(Plan, Tower);

        Assert.Equal((616.0, 740.0), (changed.SetPointUsPerCm!.Value, changed.HighAlarmUsPerCm!.Value));
    }

    [Fact]
    public void Of_SecondBiocideElevenHoursAfter_HasTheClashAlone()
    {
        // N-15 at 21:30, N-20 the next morning: 24 h are asked for, the label of one of them says so.
        var fault = Only(LookAheadFaultKind.Clash, Faults(Second(Weekday.Wednesday, "10:00"), TwoDrums));

        Assert.Equal(("biocide-2", 4), (fault.Output, fault.Count));
        Assert.Matches("^biocide-1 and biocide-2 are 1[12](\\.\\d)? h apart; the gap asked for is 24 h\\.$", English(fault));
    }

    [Fact]
    public void Of_SecondBiocideDueInTheHold_MeetsAndWaits()
    {
        var faults = Faults(Second(Weekday.Tuesday, "23:30"), TwoDrums);

        // It falls due while the first is held, waits for it, and then follows it too soon: nothing else is wrong.
        Assert.Equal([LookAheadFaultKind.Clash, LookAheadFaultKind.Waits], faults.Select(one => one.Kind).Distinct().Order());
        Assert.Equal(2, faults.Count(one => one.Kind == LookAheadFaultKind.Clash));
        Assert.Contains(faults, one => English(one).StartsWith("biocide-1 and biocide-2 meet: biocide-2 falls due while the other is under way", StringComparison.Ordinal));
    }

    [Fact]
    public void Of_SecondBiocideADayAfter_HasNoFault() => Assert.Empty(Faults(Second(Weekday.Thursday, "02:00"), TwoDrums));

    [Theory]
    [InlineData("21:00", true)]
    [InlineData("23:00", false)]
    public void Of_PlantThatStopsInTheContact_IsUntreatedFromHalfOfItOn(string stops, bool untreated)
    {
        // Doses at 19:00: fed by 20:20 at the latest, four hours of contact. From 21:00 on more than three of them stand, from 23:00 on less than two.
        var system = Tower with { Operation = new Operation { Week = [new OperatingHours { Days = Enum.GetValues<Weekday>(), From = "05:00", To = stops }] } };
        var faults = Faults(With(Plan.Feeds[1] with { Starts = ["19:00"] }), system);

        if (!untreated)
        {
            Assert.Empty(faults);
            return;
        }

        var fault = Only(LookAheadFaultKind.Untreated, faults);
        Assert.Equal(("biocide-1", 8), (fault.Output, fault.Count));
        Assert.Matches("^biocide-1: 3(\\.\\d)? h of the contact pass without circulation; the label asks for 4 h\\.$", English(fault));
    }

    [Fact]
    public void Of_HoldOfADay_HasTheHoldAlone()
    {
        var fault = Only(LookAheadFaultKind.HoldTooLong, Faults(With(Plan.Feeds[1] with { HoldBleedShutMin = 24 * 60 })));

        Assert.Matches("^biocide-1: at the end of the hold conductivity stands at \\d+ µS/cm, above the high alarm of 1480 µS/cm\\.$", English(fault));
    }

    [Theory]
    [InlineData("2026-03-09", "01:30", "29 Mar 2026", "The clocks go forward on 29 Mar 2026 and 01:30 is left out: a controller may leave out the dose of biocide-1 or run it at another hour.")]
    [InlineData("2026-10-05", "01:30", "25 Oct 2026", "The clocks go back on 25 Oct 2026 and 01:30 comes twice: a controller may run the dose of biocide-1 twice.")]
    [InlineData("2026-03-09", "02:00", "29 Mar 2026", "The clocks change on 29 Mar 2026. A controller may not: look at its clock at the next visit.")]
    [InlineData("2026-10-05", "00:59", "25 Oct 2026", "The clocks change on 25 Oct 2026. A controller may not: look at its clock at the next visit.")]
    public void Of_ClockChange_IsTheOnlyFaultAndRunsEveryDoseOnce(string from, string start, string day, string says)
    {
        // Sundays and Wednesdays; London's clocks change on a Sunday at 01:00 UTC.
        var first = DateOnly.ParseExact(from, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        var programme = With(Plan.Feeds[1] with { Days = [Weekday.Sunday, Weekday.Wednesday], Starts = [start] });

        var fault = Only(LookAheadFaultKind.ClockChange, Faults(programme, from: first));

        Assert.Equal(says, English(fault));
        Assert.Contains(day, English(fault), StringComparison.Ordinal);
        var (result, _) = LookAhead.Run(Firm, College, Tower, programme, first);
        Assert.Equal(8, result!.Doses.Count);
        Assert.Equal(8, result.Doses.Select(dose => DateOnly.FromDateTime(dose.Due)).Distinct().Count());
    }

    [Fact]
    public void Of_TwoDosesInTheRepeatedHour_NamesBoth()
    {
        var programme = With(
            Plan.Feeds[1] with { Days = [Weekday.Sunday, Weekday.Wednesday], Starts = ["01:10"] },
            new Feed { Drum = "D-B2", Output = "biocide-2", Mode = FeedMode.DosePlan, Weeks = [], Days = [Weekday.Sunday], Starts = ["01:45"], RunMinutes = 5 });

        var faults = Faults(programme, TwoDrums, new DateOnly(2026, 10, 5)).Where(one => one.Kind == LookAheadFaultKind.ClockChange);

        Assert.Equal(["biocide-1", "biocide-2"], faults.Select(one => one.Output).Order());
    }

    [Theory]
    [InlineData("2026-04-06")]
    [InlineData("2026-09-21")]
    public void Of_HealthyProgrammeBesideTheClockChange_HasNoFault(string from) =>
        Assert.Empty(Faults(Plan, from: DateOnly.ParseExact(from, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture)));

    private static WaterSystem TwoDrums { get; } = Tower with
    {
        Outputs = [.. Tower.Outputs, new Output { Code = "biocide-2", Drives = OutputDrives.Feed }],
        Drums = [.. Tower.Drums, new Drum { Code = "D-B2", Product = "N-20", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 60 }],
        Pumps = [.. Tower.Pumps, new Pump { Code = "P-B2", Drum = "D-B2", Output = "biocide-2", RatedLPerH = 4 }],
    };

    private static Programme Second(Weekday day, string start) => With(
        Plan.Feeds[1],
        new Feed { Drum = "D-B2", Output = "biocide-2", Mode = FeedMode.DosePlan, Weeks = [1, 2, 3, 4], Days = [day], Starts = [start], RunMinutes = 20 });

    // A programme has exactly the fault that was made in it.
    private static LookAheadFault Only(LookAheadFaultKind kind, IReadOnlyList<LookAheadFault> faults)
    {
        var fault = Assert.Single(faults);
        Assert.Equal(kind, fault.Kind);
        return fault;
    }

    private static string English(LookAheadFault fault) => fault.Says.In(Language.English).Replace('\u00a0', ' ');

    private static Programme With(params Feed[] doses) => Plan with { Feeds = [Plan.Feeds[0], .. doses] };

    private static IReadOnlyList<LookAheadFault> Faults(Programme programme, WaterSystem? system = null, DateOnly? from = null)
    {
        var (result, missing) = LookAhead.Run(Firm, College, PartsOnDay.Of(system ?? Tower, Day), programme, from);
        Assert.Empty(missing);
        return LookAheadFaults.Of(result!, Firm, College, system ?? Tower, programme, Day);
    }
}
