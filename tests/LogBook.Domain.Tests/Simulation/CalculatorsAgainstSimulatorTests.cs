using System.Globalization;
using LogBook.Domain.Cycles;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Dosing;
using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;
using LogBook.Domain.SetPoints;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Simulation;

/// <summary>
/// Random plants and programmes: what the calculators say is what the simulator does in the long run, within 2 %. The level that counts is the
/// mean over the water that leaves, as the closed forms mean it.
/// </summary>
public sealed class CalculatorsAgainstSimulatorTests
{
    private const int Programmes = 200;
    private const double Within = 0.02;

    private static readonly FeedMode[] Paced = [FeedMode.ByMakeUpVolume, FeedMode.AlongsideBleed, FeedMode.FixedShare, FeedMode.ShareOfLastBleed];
    private static readonly DateTime Start = new(2025, 6, 30, 0, 0, 0, DateTimeKind.Utc);

    [Fact]
    [Trait("goal", "calculators")]
    public void Calculators_RandomProgrammes_AgreeWithTheLongRun()
    {
        var worst = new Dictionary<string, double>(StringComparer.Ordinal);
        for (var i = 0; i < Programmes; i++)
        {
            foreach (var (what, said, is_) in i % 5 == 4 ? Dose(new Plant(i)) : Feed(new Plant(i), Paced[i % 5]))
            {
                var off = Math.Abs(is_ - said) / Math.Abs(is_);
                Assert.True(off <= Within, string.Create(CultureInfo.InvariantCulture, $"programme {i}, {what}: calculated {said}, simulated {is_}"));
                worst[what] = Math.Max(worst.GetValueOrDefault(what), off);
            }
        }

        // Each of them was truly asked.
        Assert.Equal((2 * Paced.Length) + 6, worst.Count);
    }

    [Fact]
    public void Calculators_ConductivityTakenAsCycles_WouldNotAgree()
    {
        // The control of the test above: without the under-reading the set point is too high by far more than the tolerance.
        var plant = new Plant(2);
        var naive = ConductivityLaw.Of(plant.MakeUp, 0).Value.At(plant.Cycles).Value;

        var (cycles, _) = plant.LongRun(plant.Programme(naive, []), Substance.Inhibitor);

        Assert.True(Math.Abs(cycles - plant.Cycles) / plant.Cycles > 2 * Within);
    }

    private static IEnumerable<(string What, double Said, double Is)> Feed(Plant plant, FeedMode mode)
    {
        var proposal = plant.SetPoint();
        var needed = plant.LossLPerH * plant.Level / 1e6 / plant.Density;
        var bleeds = plant.ValveLPerH / plant.LossLPerH;
        var feed = new FeedCase
        {
            Mode = mode,
            PumpLPerH = Flow(needed * (mode == FeedMode.ShareOfLastBleed ? bleeds * plant.Between(2, 5) : plant.Between(4, 20))),
            DensityKgPerL = plant.Density,
            Cycles = Estimate.Exact(proposal.MeanCycles.Value),
            EveryL = Math.Round(plant.LossLPerH * plant.Cycles * plant.Between(0.2, 0.8)),
            BleedLPerH = Flow(plant.ValveLPerH),
            BleedShareOfLoss = 1 - plant.DriftShare,
            CycleMin = Math.Round(plant.Between(10, 60)),
            LossLPerH = Flow(plant.EvaporationLPerH / (proposal.MeanCycles.Value - 1)),
        };
        var setting = FeedCalculator.SettingFor(feed, plant.Level).Setting.Result.Value.Value;
        var pump = mode == FeedMode.AlongsideBleed ? setting : feed.PumpLPerH.Value;
        var programmed = new Feed
        {
            Drum = "D-INH",
            Output = "inhibitor",
            Mode = mode,
            EveryL = mode == FeedMode.ByMakeUpVolume ? feed.EveryL : null,
            RunSeconds = mode == FeedMode.ByMakeUpVolume ? setting : null,
            CycleMin = mode == FeedMode.FixedShare ? feed.CycleMin : null,
            SharePercent = mode is FeedMode.FixedShare or FeedMode.ShareOfLastBleed ? setting : null,
        };

        var (cycles, level) = plant.LongRun(plant.Programme(proposal.SetPoint.Result.Value.Value, [programmed]) with { DifferentialUsPerCm = proposal.DifferentialUsPerCm }, Substance.Inhibitor, pump);

        yield return ("cycles, " + mode, proposal.MeanCycles.Value, cycles);
        yield return ("level, " + mode, FeedCalculator.LevelAt(feed, setting).Result.Value.Value, level);
    }

    private static IEnumerable<(string What, double Said, double Is)> Dose(Plant plant)
    {
        var setPoint = plant.SetPoint();
        var at = setPoint.SetPoint.Result.Value.Value;
        var feed = new FeedCase { Mode = FeedMode.DosePlan, PumpLPerH = Flow(plant.VolumeL * plant.Level / 1e6 / plant.Density * plant.Between(1, 4)), DensityKgPerL = plant.Density, VolumeL = Estimate.Exact(plant.VolumeL, "L") };
        var minutes = FeedCalculator.SettingFor(feed, plant.Level).Setting.Result.Value.Value;
        var hold = plant.Between(1, 6);
        var to = 0.93 * at;
        var fit = HoldFits.Of(new HoldCase
        {
            StartUsPerCm = at,
            MakeUpUsPerCm = Estimate.Exact(plant.MakeUp, "uS/cm"),
            EvaporationLPerH = Flow(plant.EvaporationLPerH),
            OtherLossLPerH = plant.DriftShare * plant.LossLPerH,
            VolumeL = Estimate.Exact(plant.VolumeL, "L"),
            BleedLPerH = plant.ValveLPerH,
            BleedDownToUsPerCm = to,
            FeedHours = minutes / 60,
            HoldHours = hold,
            DoseMgPerL = plant.Level,
            DecayPerHour = Math.Log(2) / plant.HalfLifeH,
        }).Value;
        var bleed = LongestBleed.Of(at, at - setPoint.DifferentialUsPerCm, Estimate.Exact(plant.MakeUp, "uS/cm"), Flow(plant.EvaporationLPerH), Flow(plant.ValveLPerH), Estimate.Exact(plant.VolumeL, "L"), plant.DriftShare * plant.LossLPerH, 1);
        var dose = new Feed
        {
            Drum = "D-B1",
            Output = "biocide-1",
            Mode = FeedMode.DosePlan,
            Weeks = [2],
            Days = [Weekday.Monday],
            Starts = ["06:00"],
            RunMinutes = minutes,
            BleedDownFirst = new BleedDown { ToUsPerCm = to },
            HoldBleedShutMin = 60 * hold,
        };
        var programme = plant.Programme(at, [dose]) with { DifferentialUsPerCm = setPoint.DifferentialUsPerCm, From = DateOnly.FromDateTime(Start), WeekOneFrom = DateOnly.FromDateTime(Start) };
        var first = plant.Run(programme, feed.PumpLPerH.Value, steady: true);
        first.KeepsLog = true;
        first.AdvanceTo(Start.AddDays(9));
        DateTime When(PlantEventKind kind) => first.Log.First(e => e.What == kind).Utc;

        // The very same plant once more, stopped at the moments that count.
        var again = plant.Run(programme, feed.PumpLPerH.Value, steady: true);
        again.AdvanceTo(When(PlantEventKind.DoseEnded));
        yield return ("dose after feed", fit.DoseAfterFeed.Value, again.Of(Substance.Biocide));
        again.AdvanceTo(When(PlantEventKind.HoldEnded));
        yield return ("dose left", fit.DoseLeft.Value, again.Of(Substance.Biocide));
        yield return ("peak", fit.Peak.Result.Value.Value, again.ConductivityUsPerCm);
        yield return ("dose fed", FeedCalculator.LevelAt(feed, minutes).Result.Value.Value, again.Balance.Fed[(int)Substance.Biocide] / plant.VolumeL);

        // A bleed may be under way when the dose is due: what is left of the way down is part of the time from the set point.
        var opened = first.Log.Where(e => e.What == PlantEventKind.BleedOpened).Skip(2).First().Utc;
        var shut = first.Log.First(e => e.What == PlantEventKind.BleedShut && e.Utc > opened).Utc;
        yield return ("bleed", bleed.Result.Value.Value, (shut - opened).TotalMinutes);
        yield return ("longest hold", HoldFits.Of(new HoldCase
        {
            StartUsPerCm = to,
            MakeUpUsPerCm = Estimate.Exact(plant.MakeUp, "uS/cm"),
            EvaporationLPerH = Flow(plant.EvaporationLPerH),
            OtherLossLPerH = plant.DriftShare * plant.LossLPerH,
            VolumeL = Estimate.Exact(plant.VolumeL, "L"),
            HighAlarmUsPerCm = again.ConductivityUsPerCm,
            FeedHours = minutes / 60,
            HoldHours = hold,
        }).Value.LongestHoldHours.Value, hold);
    }

    private static Estimate Flow(double value) => Estimate.Exact(value, "L/h");

    /// <summary>One random plant.</summary>
    private sealed class Plant
    {
        private readonly SplitMix _draw;

        public Plant(int number)
        {
            _draw = SplitMix.For((ulong)number, "calculators");
            VolumeL = 1000 * Math.Pow(10, Between(0.5, 2.5));
            Cycles = Between(2.5, 8);
            WashoutH = Between(5, 80);
            MakeUp = Between(100, 700);
            DriftShare = Between(0, 0.06);
            ValveLPerH = LossLPerH * Between(4, 10);
            Level = Between(50, 150);
            Density = Between(1.0, 1.25);
            HalfLifeH = Between(10, 60);
        }

        public double VolumeL { get; }

        public double Cycles { get; }

        public double WashoutH { get; }

        public double MakeUp { get; }

        public double DriftShare { get; }

        public double ValveLPerH { get; }

        public double Level { get; }

        public double Density { get; }

        public double HalfLifeH { get; }

        public double LossLPerH => VolumeL * Math.Log(2) / WashoutH;

        public double EvaporationLPerH => LossLPerH * (Cycles - 1);

        public double Between(double low, double high) => low + ((high - low) * _draw.NextUnit());

        public SetPointProposal SetPoint() => SetPointCalculator.Of(new SetPointCase
        {
            TargetCycles = Cycles,
            Conductivity = new MakeUpReadings([MakeUp]),
            DifferentialPercent = Between(1, 3),
        }).Value;

        public Programme Programme(double setPoint, IReadOnlyList<Feed> feeds) => new()
        {
            From = new DateOnly(2025, 6, 30),
            SetPointUsPerCm = setPoint,
            DifferentialUsPerCm = 0.02 * setPoint,
            BleedActs = BleedActs.OnRise,
            Feeds = feeds,
        };

        public PlantSimulation Run(Programme programme, double pump, bool steady)
        {
            var model = new PlantModel
            {
                VolumeL = VolumeL,
                BleedLPerH = ValveLPerH,
                DriftLPerH = DriftShare * LossLPerH,
                HeatKw = EvaporationLPerH / 1.26,
                Load = steady ? new LoadProfile { WeatherShare = 0, Hours = [.. Enumerable.Repeat(1.0, 24)] } : new LoadProfile { WeatherShare = 0 },
                MakeUp = new MakeUpWater { ConductivityUsPerCm = MakeUp },
                SeasonShare = 0,
                WeekShare = 0,
                ProbeShare = 0,
                InhibitorUsPerCmPerMgPerL = 0,
                Products =
                [
                    new PlantProduct { Code = "P-40", Becomes = Substance.Inhibitor, DensityKgPerL = Density },
                    new PlantProduct { Code = "N-15", Becomes = Substance.Biocide, DensityKgPerL = Density, HalfLifeH = HalfLifeH },
                ],
                StartCycles = Cycles * 0.98,
            };
            var system = new WaterSystem
            {
                Site = "YAF-1",
                Code = "CT-1",
                Name = "Cooling tower 1",
                Kind = SystemKind.OpenRecirculating,
                Outputs = SimulatedCollege.System.Outputs,
                Drums = [.. SimulatedCollege.System.Drums.Select(drum => drum with { CapacityL = 1e7, UnusableL = 0 })],
                Pumps = [.. SimulatedCollege.System.Pumps.Select(p => p with { RatedLPerH = pump })],
            };
            return new PlantSimulation(model, system, programme, TimeZoneInfo.Utc, Start, 1);
        }

        /// <summary>Cycles and level over the water that left, after eight half-lives.</summary>
        public (double Cycles, double Level) LongRun(Programme programme, Substance of, double pump = 1)
        {
            var plant = Run(programme, pump, steady: false);
            plant.AdvanceTo(Start.AddDays(Math.Ceiling(8 * WashoutH / 24)));
            var before = plant.Balance;
            plant.AdvanceTo(plant.Utc.AddDays(21));
            var after = plant.Balance;
            var left = after.BledL + after.LostL - before.BledL - before.LostL;
            return ((after.MakeUpL - before.MakeUpL) / left, (after.Out[(int)of] - before.Out[(int)of]) / left);
        }
    }
}
