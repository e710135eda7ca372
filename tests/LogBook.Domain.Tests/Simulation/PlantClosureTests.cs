using CsCheck;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Domain.Tests.Simulation;

/// <summary>Whatever the plant, its programme and its faults: water, ions and products that went in are out, gone or still there.</summary>
public class PlantClosureTests
{
    private const double Closure = 1e-9;
    private static readonly DateTime Start = new(2025, 7, 1, 0, 0, 0, DateTimeKind.Utc);

    private static readonly FeedMode[] Modes =
        [FeedMode.ByMakeUpVolume, FeedMode.AlongsideBleed, FeedMode.FixedShare, FeedMode.ShareOfLastBleed, FeedMode.ByResidual, FeedMode.Feeder];

    private static readonly Gen<(double VolumeL, double HeatKw, double Valve, double Drift, double Cycles)> Plates = Gen.Select(
        Gen.Double[500, 300000], Gen.Double[20, 9000], Gen.Double[0.5, 4], Gen.Double[0, 0.1], Gen.Double[1.5, 10]);

    private static readonly Gen<(FeedMode Mode, double PumpShare, int Dose, int HoldMin)> Feeds = Gen.Select(
        Gen.Int[0, 5].Select(i => Modes[i]),
        Gen.Double[0.1, 5],
        Gen.Int[1, 90],
        Gen.Int[0, 600]);

    private static readonly Gen<(int Fault, double Size, int Day, bool StopsAtNight)> Faults = Gen.Select(Gen.Int[0, 9], Gen.Double[0, 1], Gen.Int[1, 15], Gen.Bool);

    [Fact]
    public void Balance_AnyPlantAndFault_Closes() => Gen.Select(Plates, Feeds, Faults, Gen.ULong).Sample(
        (plates, feeds, fault, seed) =>
        {
            var plant = Plant(plates, feeds, fault, seed);
            plant.AdvanceTo(Start.AddDays(9).AddMinutes(seed % 1000));
            plant.AddToDrum("D-INH", 7);
            plant.Pour("N-15", 0.3);
            if (fault.Day % 5 == 0)
            {
                plant.Refill();
            }

            plant.AdvanceTo(Start.AddDays(20));
            return Closes(plant.Balance);
        },
        iter: 120);

    private static bool Closes(PlantBalance balance)
    {
        Near("water", balance.MakeUpL, balance.EvaporatedL + balance.BledL + balance.LostL);
        foreach (var substance in Enum.GetValues<Substance>())
        {
            var i = (int)substance;
            Near(substance.ToString(), balance.Start[i] + balance.In[i], balance.Out[i] + balance.Gone[i] + balance.Now[i]);
            Assert.True(balance.Fed[i] <= (balance.In[i] * (1 + Closure)) + Closure, $"{substance}: fed {balance.Fed[i]} of {balance.In[i]} in");
        }

        foreach (var drum in balance.Drums)
        {
            Near(drum.Drum, drum.StartL + drum.AddedL, drum.DrawnL + drum.NowL);
        }

        // What the pumps drew and people poured is in the water or lies in a dead line.
        Near("inhibitor", balance.Drums[0].DrawnL * 1.12e6, balance.Fed[(int)Substance.Inhibitor] + balance.Stranded[(int)Substance.Inhibitor]);
        Near("biocide", (balance.Drums[1].DrawnL + 0.3) * 1.05e6, balance.Fed[(int)Substance.Biocide] + balance.Stranded[(int)Substance.Biocide]);
        return true;
    }

    private static void Near(string what, double one, double other) =>
        Assert.True(Math.Abs(one - other) <= Closure * Math.Max(1, Math.Max(Math.Abs(one), Math.Abs(other))), $"{what}: {one:R} and {other:R}");

    private static PlantSimulation Plant(
        (double VolumeL, double HeatKw, double Valve, double Drift, double Cycles) plates,
        (FeedMode Mode, double PumpShare, int Dose, int HoldMin) feeds,
        (int Fault, double Size, int Day, bool StopsAtNight) fault,
        ulong seed)
    {
        var evaporation = 1.26 * plates.HeatKw;
        var bleed = evaporation / (plates.Cycles - 1);
        var setPoint = Math.Round(300 * plates.Cycles * (1 - (0.025 * (plates.Cycles - 1))));
        var college = SimulatedCollege.System;
        var system = college with
        {
            Operation = fault.StopsAtNight
                ? new Operation { Week = [new OperatingHours { Days = [.. Enum.GetValues<Weekday>()], From = "07:00", To = "20:00" }] }
                : null,
            Drums = [.. college.Drums.Select(d => d with { CapacityL = 1000 })],
            Pumps = feeds.Mode == FeedMode.Feeder
                ? [college.Pumps[1]]
                : [college.Pumps[0] with { RatedLPerH = feeds.PumpShare * bleed * 1e-4 }, college.Pumps[1] with { RatedLPerH = plates.VolumeL * 2e-4 }],
        };
        var model = SimulatedCollege.Model with
        {
            VolumeL = plates.VolumeL,
            HeatKw = plates.HeatKw,
            BleedLPerH = plates.Valve * bleed,
            DriftLPerH = plates.Drift * bleed,
            StartCycles = plates.Cycles * 0.9,
            DepositAboveMgPerL = 82 * plates.Cycles * 0.8,
            FeederKgPerH = 0.02,
        };
        var inhibitor = new Feed
        {
            Drum = "D-INH",
            Output = feeds.Mode == FeedMode.Feeder ? null : "inhibitor",
            Mode = feeds.Mode,
            EveryL = 500,
            RunSeconds = 40,
            CycleMin = 30,
            SharePercent = 20,
            LongestFeedMin = 45,
            SetPoint = 100,
            Differential = 5,
        };
        var dose = new Feed
        {
            Drum = "D-B1",
            Output = "biocide-1",
            Mode = FeedMode.DosePlan,
            Days = [Weekday.Tuesday, Weekday.Friday],
            Starts = ["02:30", "21:30"],
            RunMinutes = feeds.Dose,
            BleedDownFirst = new BleedDown { Minutes = 60, ToUsPerCm = Math.Round(0.95 * setPoint) },
            HoldBleedShutMin = feeds.HoldMin,
            InhibitorMeanwhile = feeds.Dose % 2 == 0 ? InhibitorMeanwhile.Waits : InhibitorMeanwhile.Skips,
        };
        var programme = SimulatedCollege.Programme with { SetPointUsPerCm = setPoint, DifferentialUsPerCm = Math.Round(0.02 * setPoint), Feeds = [inhibitor, dose] };
        var plant = new PlantSimulation(model, system, programme, TimeZoneInfo.FindSystemTimeZoneById("Europe/London"), Start, seed);
        plant.Schedule(Story(fault, bleed));
        return plant;
    }

    private static List<ScenarioEntry> Story((int Fault, double Size, int Day, bool StopsAtNight) fault, double bleed)
    {
        var on = Start.AddDays(fault.Day);
        ScenarioEntry Entry(ScenarioAct act, string? part, double value) => new() { On = on, Until = fault.Size > 0.5 ? on.AddDays(3) : null, Act = act, Part = part, Value = value };
        return fault.Fault switch
        {
            1 => [Entry(ScenarioAct.Leak, null, 2 * fault.Size * bleed)],
            2 => [Entry(ScenarioAct.ForceOn, "inhibitor", 0)],
            3 => [Entry(ScenarioAct.ForceOn, "biocide-1", 0)],
            4 => [Entry(ScenarioAct.FlowBridged, null, 1)],
            5 => [Entry(ScenarioAct.ProbeFouling, null, -5 * fault.Size)],
            6 => [Entry(ScenarioAct.BleedValve, null, fault.Size)],
            7 => [Entry(ScenarioAct.BleedPasses, null, fault.Size * bleed)],
            8 => [Entry(ScenarioAct.PumpOutput, "biocide-1", fault.Size)],
            9 => [Entry(ScenarioAct.ForceOn, "bleed", 0)],
            _ => [],
        };
    }
}
