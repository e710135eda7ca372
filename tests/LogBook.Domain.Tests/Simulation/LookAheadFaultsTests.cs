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
        Assert.Contains("run it twice", Assert.Single(hit, one => one.Kind == LookAheadFaultKind.ClockChange).Says.In(Language.English), StringComparison.Ordinal);
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

    private static Programme With(params Feed[] doses) => Plan with { Feeds = [Plan.Feeds[0], .. doses] };

    private static IReadOnlyList<LookAheadFault> Faults(Programme programme, WaterSystem? system = null, DateOnly? from = null)
    {
        var (result, missing) = LookAhead.Run(Firm, College, PartsOnDay.Of(system ?? Tower, Day), programme, from);
        Assert.Empty(missing);
        return LookAheadFaults.Of(result!, Firm, College, system ?? Tower, programme, Day);
    }
}
