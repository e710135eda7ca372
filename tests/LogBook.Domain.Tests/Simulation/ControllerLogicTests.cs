using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Domain.Tests.Simulation;

public class ControllerLogicTests
{
    private static readonly DateTime Start = new(2025, 7, 1, 0, 0, 0, DateTimeKind.Utc);
    private static readonly TimeZoneInfo Zone = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");

    private static readonly PlantModel Quiet = SimulatedCollege.Model with
    {
        SeasonShare = 0, WeekShare = 0, ProbeShare = 0, Load = new LoadProfile { WeatherShare = 0, Hours = [.. Enumerable.Repeat(1.0, 24)] },
    };

    private static readonly Feed Dose = SimulatedCollege.Programme.Feeds[1];

    [Fact]
    public void WashOut_NothingFed_FollowsTheExponential()
    {
        // Reference/02, wash-out: c = c0 exp(-(W/V + k) t), W drift alone, no bleed.
        var plant = Plant(SimulatedCollege.Programme with { SetPointUsPerCm = null, Feeds = [] }, Quiet with { DriftLPerH = 200 });
        plant.Pour("N-15", 1);
        var dosed = plant.Of(Substance.Biocide);

        plant.AdvanceTo(Start.AddHours(50));

        Assert.Equal(1.05e6 / 10000, dosed, 1e-9);
        Assert.Equal(100 * Math.Exp(-0.02 * 50), plant.Of(Substance.Inhibitor), 1e-9);
        Assert.Equal(dosed * Math.Exp(-(0.02 + (Math.Log(2) / 30)) * 50), plant.Of(Substance.Biocide), 1e-9);
    }

    [Fact]
    public void OnFall_BleedOpensBelowAndShutsAbove()
    {
        // Mirrored: a bleed that acts on fall opens when the display falls to the set point; here it starts above and is thinned by a leak.
        var plant = Plant(
            SimulatedCollege.Programme with { SetPointUsPerCm = 1100, DifferentialUsPerCm = 40, BleedActs = BleedActs.OnFall, Feeds = [], DisplayAverageSeconds = null },
            Quiet with { BleedLPerH = 10 });
        plant.Schedule([
            new ScenarioEntry { On = Start, Act = ScenarioAct.Leak, Value = 800 },
            new ScenarioEntry { On = Start.AddDays(2), Act = ScenarioAct.Leak, Value = 0 },
        ]);
        plant.KeepsLog = true;

        plant.AdvanceTo(Start.AddDays(6));

        var opened = plant.Log.First(e => e.What == PlantEventKind.BleedOpened);
        var shut = plant.Log.First(e => e.What == PlantEventKind.BleedShut);
        Assert.Equal(1100, opened.UsPerCm, 1e-4);
        Assert.Equal(1140, shut.UsPerCm, 1e-4);
        Assert.True(shut.Utc > Start.AddDays(1.9));
    }

    [Theory]
    [InlineData(0, 0)]
    [InlineData(600, 5)]
    public void DisplayAverage_OfARamp_LagsByHalfItsLength(double seconds, double minutesLate)
    {
        var plant = Plant(SimulatedCollege.Programme with { DisplayAverageSeconds = seconds, Feeds = [] }, Quiet);
        plant.KeepsLog = true;

        plant.AdvanceTo(Start.AddHours(12));

        // Rise without bleed is a straight line (row 01-046): from 4.4 cycles to the set point.
        var slope = 300 * 500 * 1.26 / 10000;
        double At(double hours)
        {
            var conductance = 1320 + (slope * hours);
            return conductance * (1 - (0.025 * ((conductance / 300) - 1)));
        }

        var crossing = 0.0;
        for (var step = 1.0; step > 1e-12; step /= 2)
        {
            crossing += At(crossing + step) < 1232 ? step : 0;
        }

        Assert.Equal((crossing * 60) + minutesLate, (plant.Log.First(e => e.What == PlantEventKind.BleedOpened).Utc - Start).TotalMinutes, 1e-3);
    }

    [Fact]
    public void LongestBleed_RaisesAlarmAndDoesNotShut()
    {
        var plant = Plant(SimulatedCollege.Programme with { LongestBleedMin = 15, Feeds = [] }, Quiet with { BleedLPerH = 240 });
        plant.KeepsLog = true;

        plant.AdvanceTo(Start.AddHours(12));

        var opened = plant.Log.First(e => e.What == PlantEventKind.BleedOpened);
        var alarm = plant.Log.Single(e => e.What == PlantEventKind.LongBleed);
        Assert.Equal(15, (alarm.Utc - opened.Utc).TotalMinutes, 1e-3);
        Assert.True(plant.IsOn("bleed"));
        Assert.Contains("long bleed", plant.Alarms);
    }

    [Fact]
    public void Alarms_HighAndLow_StandWhenTheDisplayPassesThem()
    {
        var high = Plant(SimulatedCollege.Programme with { Feeds = [] }, Quiet);
        high.SetSwitch("bleed", SwitchPosition.ForcedOff);
        high.AdvanceTo(Start.AddDays(2));
        var low = Plant(SimulatedCollege.Programme with { Feeds = [], LowAlarmUsPerCm = 925 }, Quiet);
        low.SetSwitch("bleed", SwitchPosition.ForcedOn);
        low.AdvanceTo(Start.AddDays(2));

        Assert.Equal(["high conductivity"], high.Alarms);
        Assert.Contains("low conductivity", low.Alarms);
        Assert.DoesNotContain("high conductivity", low.Alarms);
    }

    [Fact]
    public void NoFlow_DoseWaits_AndRunsOnceWhenFlowIsBack()
    {
        var system = SimulatedCollege.System with
        {
            Operation = new Operation { Week = [new OperatingHours { Days = [.. Enum.GetValues<Weekday>()], From = "07:00", To = "20:00" }] },
        };
        var plant = new PlantSimulation(Quiet, system, SimulatedCollege.Programme with { Feeds = [Dose with { BleedDownFirst = null }] }, Zone, Start, 1) { KeepsLog = true };

        plant.AdvanceTo(Start.AddDays(3));

        Assert.Equal(new DateTime(2025, 7, 1, 20, 30, 0, DateTimeKind.Utc), Assert.Single(plant.Log, e => e.What == PlantEventKind.DoseDue).Utc);
        Assert.Equal(new DateTime(2025, 7, 2, 6, 0, 0, DateTimeKind.Utc), Assert.Single(plant.Log, e => e.What == PlantEventKind.DoseStarted).Utc);
    }

    [Fact]
    public void FlowStopsAndFeedsStop_ForcedOnPumpsIntoTheDeadLine()
    {
        var system = SimulatedCollege.System with
        {
            Operation = new Operation { Week = [new OperatingHours { Days = [.. Enum.GetValues<Weekday>()], From = "07:00", To = "20:00" }] },
        };
        var plant = new PlantSimulation(Quiet, system, SimulatedCollege.Programme, Zone, Start, 1);
        plant.AdvanceTo(Start.AddHours(20));
        Assert.False(plant.IsOn("inhibitor") || plant.IsOn("bleed") || plant.IsRunning);

        plant.SetSwitch("inhibitor", SwitchPosition.ForcedOn);
        plant.AdvanceTo(Start.AddHours(22));

        Assert.Equal(2 * 1.5 * 1.12e6, plant.Balance.Stranded[(int)Substance.Inhibitor], 1.0);
        Assert.Equal(2, plant.HoursRun("inhibitor") - HoursBefore(system), 1e-3);
    }

    [Theory]
    [InlineData(InhibitorMeanwhile.Feeds)]
    [InlineData(InhibitorMeanwhile.Waits)]
    [InlineData(InhibitorMeanwhile.Skips)]
    public void InhibitorMeanwhile_DuringTheFeedOfTheBiocide(InhibitorMeanwhile meanwhile)
    {
        // Half of every half hour; the dose runs 60 min.
        var inhibitor = new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.FixedShare, CycleMin = 30, SharePercent = 50 };
        var plant = Plant(SimulatedCollege.Programme with { Feeds = [inhibitor, Dose with { BleedDownFirst = null, RunMinutes = 60, InhibitorMeanwhile = meanwhile }] }, Quiet);
        plant.AdvanceTo(Start.AddHours(20.5));
        var before = plant.HoursRun("inhibitor");

        plant.AdvanceTo(Start.AddHours(21.5));

        Assert.Equal(meanwhile == InhibitorMeanwhile.Feeds ? 0.5 : 0, plant.HoursRun("inhibitor") - before, 1e-6);
    }

    [Fact]
    public void Clock_AheadByTwoHoursAndAWeek_MovesTheDose()
    {
        var plant = Plant(SimulatedCollege.Programme with { Feeds = [Dose with { Weeks = [2], Days = [Weekday.Friday] }] }, Quiet);
        plant.KeepsLog = true;
        plant.ClockOffMin = 120;
        plant.WeekOff = 1;

        plant.AdvanceTo(Start.AddDays(13));

        // The programme's week 1 began on Monday 30 June; the controller believes it is week 2, and 21:30 at 19:30.
        Assert.Equal(new DateTime(2025, 7, 4, 18, 30, 0, DateTimeKind.Utc), Assert.Single(plant.Log, e => e.What == PlantEventKind.DoseDue).Utc);
        Assert.Equal(4, plant.ProgrammeWeek);
    }

    [Fact]
    public void DosePlan_OverFourWeeks_RunsOnlyInItsWeeks()
    {
        var plant = Plant(SimulatedCollege.Programme with { Feeds = [Dose with { Weeks = [1, 3] }] }, Quiet);
        plant.KeepsLog = true;

        plant.AdvanceTo(Start.AddDays(55));

        Assert.Equal(
            ["07-01", "07-04", "07-15", "07-18", "07-29", "08-01", "08-12", "08-15"],
            plant.Log.Where(e => e.What == PlantEventKind.DoseDue).Select(e => e.Utc.ToString("MM-dd", System.Globalization.CultureInfo.InvariantCulture)));
    }

    [Fact]
    public void SecondDoseInTheSameSlot_WaitsForTheFirst_AndForItsContactTime()
    {
        var second = Dose with { Output = "halogen", Drum = "D-HAL", BleedDownFirst = null, HoldBleedShutMin = null, WaitsFor = ["biocide-1"] };
        var plant = new PlantSimulation(Quiet, WithHalogen(FeedMode.DosePlan), SimulatedCollege.Programme with { Feeds = [Dose with { BleedDownFirst = null }, second] }, Zone, Start, 1) { KeepsLog = true };

        plant.AdvanceTo(Start.AddDays(2));

        var started = plant.Log.Where(e => e.What == PlantEventKind.DoseStarted).ToList();
        var ended = plant.Log.First(e => e.What == PlantEventKind.DoseEnded);
        Assert.Equal(["biocide-1", "halogen"], started.Select(e => e.Of));
        Assert.Equal(4, (started[1].Utc - ended.Utc).TotalHours, 1e-6);
    }

    [Fact]
    public void ByPh_AcidHoldsTheReadingBetweenItsLimits()
    {
        var college = SimulatedCollege.System;
        var system = college with
        {
            Outputs = [.. college.Outputs, new Output { Code = "acid", Drives = OutputDrives.Feed }],
            Drums = [.. college.Drums, new Drum { Code = "D-ACID", Product = "A-38", Shape = DrumShape.VerticalCylinder, CapacityL = 1000, HeightCm = 100 }],
            Pumps = [.. college.Pumps, new Pump { Code = "P-ACID", Drum = "D-ACID", Output = "acid", RatedLPerH = 2 }],
        };
        var model = Quiet with { Products = [.. Quiet.Products, new PlantProduct { Code = "A-38", Becomes = Substance.Acid, DensityKgPerL = 1.28, Share = 0.388 }] };
        var programme = SimulatedCollege.Programme with
        {
            Feeds = [new Feed { Drum = "D-ACID", Output = "acid", Mode = FeedMode.ByPh, SetPoint = 8.0, Differential = 0.1, Unit = "[pH]", Direction = FeedDirection.Down }],
        };
        var plant = new PlantSimulation(model, system, programme, Zone, Start, 1);
        Assert.InRange(plant.Ph, 8.3, 8.5);
        plant.AdvanceTo(Start.AddDays(2));
        var readings = new List<double>();

        // A bleed thins the water below the limit at which the acid stopped.
        for (var minute = 0; minute < 5000; minute += 7)
        {
            plant.AdvanceTo(Start.AddDays(2).AddMinutes(minute));
            readings.Add(plant.Ph);
        }

        Assert.All(readings, ph => Assert.InRange(ph, 7.97, 8.1 + 1e-5));
        Assert.True(readings.Max() - readings.Min() > 0.08);

        // Neutralised = fed: density x share, less what washed out.
        Assert.Equal((800 - plant.DrumL("D-ACID")) * 1.28e6 * 0.388, plant.Balance.Fed[(int)Substance.Acid], 1e-3 * plant.Balance.Fed[(int)Substance.Acid]);
    }

    [Fact]
    public void ByResidual_HoldsTheHalogenBetweenItsLimits()
    {
        var programme = SimulatedCollege.Programme with
        {
            Feeds = [new Feed { Drum = "D-HAL", Output = "halogen", Mode = FeedMode.ByResidual, SetPoint = 0.5, Differential = 0.1, Unit = "mg/L", Direction = FeedDirection.Up }],
        };
        var plant = new PlantSimulation(Quiet, WithHalogen(FeedMode.ByResidual), programme, Zone, Start, 1);
        plant.AdvanceTo(Start.AddDays(1));

        for (var minute = 0; minute < 3000; minute += 11)
        {
            plant.AdvanceTo(Start.AddDays(1).AddMinutes(minute));
            Assert.InRange(plant.Of(Substance.Halogen), 0.4 - 1e-5, 0.5 + 1e-5);
        }
    }

    [Fact]
    public void MeasuredFeed_BeyondItsLongestTime_StopsAndAnAlarmStands()
    {
        var programme = SimulatedCollege.Programme with
        {
            Feeds = [new Feed { Drum = "D-HAL", Output = "halogen", Mode = FeedMode.ByOrp, SetPoint = 900, Differential = 20, Unit = "mV", LongestFeedMin = 90 }],
        };
        var plant = new PlantSimulation(Quiet, WithHalogen(FeedMode.ByOrp), programme, Zone, Start, 1);

        plant.AdvanceTo(Start.AddDays(1));

        Assert.Equal(1.5, plant.HoursRun("halogen"), 1e-6);
        Assert.Contains("long feed halogen", plant.Alarms);
        plant.ClearAlarms();
        plant.AdvanceTo(Start.AddDays(2));
        Assert.Equal(3, plant.HoursRun("halogen"), 1e-6);
    }

    [Fact]
    public void Feeder_GivesOffItsRateWhileWaterCirculates()
    {
        var college = SimulatedCollege.System;
        var system = college with
        {
            Operation = new Operation { Week = [new OperatingHours { Days = [.. Enum.GetValues<Weekday>()], From = "07:00", To = "19:00" }] },
            Drums = [.. college.Drums, new Drum { Code = "F-1", Product = "H-12", Shape = DrumShape.ByWeight, CapacityL = 10, TareKg = 5 }],
        };
        var programme = SimulatedCollege.Programme with { Feeds = [new Feed { Drum = "F-1", Mode = FeedMode.Feeder }] };
        var plant = new PlantSimulation(Quiet with { FeederKgPerH = 0.012 }, system, programme, Zone, Start, 1);

        plant.AdvanceTo(Start.AddDays(10));

        Assert.Equal(10 * 12 * 0.012 * 0.12e6, plant.Balance.Fed[(int)Substance.Halogen], 1e-3);
        Assert.Equal(8 - (10 * 12 * 0.012 / 1.2), plant.DrumL("F-1"), 1e-9);
        Assert.Equal(0, plant.Balance.Stranded[(int)Substance.Halogen]);
    }

    [Fact]
    public void BleedValve_BlockedOrPassing_ChangesTheFlowOnly()
    {
        var blocked = Plant(SimulatedCollege.Programme with { Feeds = [] }, Quiet);
        blocked.Schedule([new ScenarioEntry { On = Start, Act = ScenarioAct.BleedValve, Value = 0.25 }]);
        blocked.AdvanceTo(Start.AddDays(3));
        var passing = Plant(SimulatedCollege.Programme with { Feeds = [] }, Quiet);
        // The story is looked at every hour; the first one has begun.
        passing.Schedule([new ScenarioEntry { On = Start, Act = ScenarioAct.BleedPasses, Value = 400 }]);
        passing.AdvanceTo(Start.AddDays(3));

        Assert.Equal(250 * blocked.HoursRun("bleed"), blocked.Balance.BledL, 1.0);
        Assert.Equal(400 * 71, passing.Balance.BledL - (600 * passing.HoursRun("bleed")), 1.0);
        Assert.True(passing.ConductivityUsPerCm < 1100);
    }

    private static double HoursBefore(WaterSystem system)
    {
        var plant = new PlantSimulation(Quiet, system, SimulatedCollege.Programme, Zone, Start, 1);
        plant.AdvanceTo(Start.AddHours(20));
        return plant.HoursRun("inhibitor");
    }

    private static WaterSystem WithHalogen(FeedMode mode) => SimulatedCollege.System with
    {
        Outputs = [.. SimulatedCollege.System.Outputs, new Output { Code = "halogen", Drives = OutputDrives.Feed }],
        Drums = [.. SimulatedCollege.System.Drums, new Drum { Code = "D-HAL", Product = "H-12", Shape = DrumShape.VerticalCylinder, CapacityL = 100, HeightCm = 80 }],
        Pumps = [.. SimulatedCollege.System.Pumps, new Pump { Code = "P-HAL", Drum = "D-HAL", Output = "halogen", RatedLPerH = mode == FeedMode.ByOrp ? 0.05 : 1 }],
    };

    private static PlantSimulation Plant(Programme programme, PlantModel model) => new(model, SimulatedCollege.System, programme, Zone, Start, 1);
}
