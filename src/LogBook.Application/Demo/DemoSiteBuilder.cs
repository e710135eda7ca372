using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Application.Demo;

/// <summary>Turns the few lines of a site file into the set-up people know and the plant as it truly is.</summary>
internal static class DemoSiteBuilder
{
    public const string Zone = "Europe/London";

    private static readonly DateOnly FirstProgramme = new(2025, 6, 2);

    public static Site Site(DemoSiteFile file, DemoFirmFile firm) => new()
    {
        Code = file.Code,
        Customer = file.Customer.Code,
        Name = file.Name,
        TimeZone = Zone,
        VisitEveryDays = file.Visits.EveryDays,
        Units = file.Units,
        AssignedTo = file.Technician,
        SummaryWithinHours = 24,
        PhotosAllowed = true,
        Address = $"{firm.Name} round, Oxterhelm",
    };

    public static WaterSystem System(DemoSiteFile file, DemoFirmFile firm)
    {
        var plant = file.Plant;
        var unit = file.Units == UnitSystem.Us ? "[gal_us]" : "m3";
        var meter = new Meter { Code = "MU", Measures = MeterMeasures.MakeUp, Unit = unit, Digits = unit == "m3" ? 6 : 8, LitresPerPulse = unit == "m3" ? 100 : 10 };
        var meters = new List<Meter> { meter };
        if (plant.MeterRenewed is { } renewed)
        {
            meters.Add(meter with { Digits = renewed.Digits, DialMultiplier = renewed.DialMultiplier, From = renewed.From });
        }

        var drums = new List<Drum> { DrumOf("D-INH", file.Inhibitor.Product, file.Inhibitor.DrumL), DrumOf("D-B1", file.Biocide.Product, file.Biocide.DrumL) };
        var pumps = new List<Pump>
        {
            new() { Code = "P-INH", Drum = "D-INH", Output = "inhibitor", RatedLPerH = file.Inhibitor.PumpLPerH },
            new() { Code = "P-B1", Drum = "D-B1", Output = "biocide-1", RatedLPerH = file.Biocide.PumpLPerH },
        };
        var outputs = new List<Output>
        {
            new() { Code = "bleed", Drives = OutputDrives.Bleed },
            new() { Code = "inhibitor", Drives = OutputDrives.Feed },
            new() { Code = "biocide-1", Drives = OutputDrives.Feed },
        };
        var probes = new List<Probe> { new() { Code = "C1", Of = ProbeKind.Conductivity } };
        if (file.Halogen is { Mode: FeedMode.Feeder } solid)
        {
            drums.Add(new Drum { Code = "D-HAL", Product = solid.Product, Shape = DrumShape.ByWeight, CapacityL = solid.DrumL, TareKg = 6, DeliveryDays = 7 });
        }
        else if (file.Halogen is { } halogen)
        {
            drums.Add(DrumOf("D-HAL", halogen.Product, halogen.DrumL));
            pumps.Add(new Pump { Code = "P-HAL", Drum = "D-HAL", Output = "halogen", RatedLPerH = halogen.PumpLPerH });
            outputs.Add(new Output { Code = "halogen", Drives = OutputDrives.Feed });
            if (halogen.Mode == FeedMode.ByOrp)
            {
                probes.Add(new Probe { Code = "O1", Of = ProbeKind.Orp });
            }
        }

        if (file.Acid is { } acid)
        {
            drums.Add(DrumOf("D-ACID", acid.Product, acid.DrumL));
            pumps.Add(new Pump { Code = "P-ACID", Drum = "D-ACID", Output = "acid", RatedLPerH = acid.PumpLPerH });
            outputs.Add(new Output { Code = "acid", Drives = OutputDrives.Feed });
            probes.Add(new Probe { Code = "H1", Of = ProbeKind.Ph });
        }

        var first = Programme(file);
        return new WaterSystem
        {
            Site = file.Code,
            Code = "CT-1",
            Name = "Cooling tower 1",
            Kind = SystemKind.OpenRecirculating,
            VolumeL = plant.VolumeM3 * 1000,
            FullLoadKw = Math.Round(plant.HeatKw * 1.4),
            RecirculationLPerMin = Math.Round(plant.HeatKw * 2.87 / 10) * 10,
            BleedValveLPerH = plant.BleedM3PerH * 1000,
            Metals = plant.Metals,
            Rules = [.. firm.Rules.Select(r => r.Code).Distinct(StringComparer.Ordinal)],
            Operation = file.Operation,
            Probes = probes,
            Outputs = outputs,
            Meters = meters,
            Drums = drums,
            Pumps = pumps,
            Programmes =
            [
                first,
                .. file.Programmes.Select(change => first with
                {
                    From = change.From,
                    WeekOneFrom = FirstProgramme,
                    Why = change.Why,
                    Feeds = [.. first.Feeds.Select(f => f.Output == "inhibitor"
                        ? f with
                        {
                            Mode = change.Inhibitor.Mode,
                            EveryL = change.Inhibitor.EveryL,
                            RunSeconds = change.Inhibitor.RunSeconds,
                            CycleMin = change.Inhibitor.CycleMin,
                            SharePercent = change.Inhibitor.SharePercent,
                        }
                        : f)],
                }),
            ],
        };
    }

    public static PlantModel Plant(DemoSiteFile file, DemoFirmFile firm, ulong seed)
    {
        var plant = file.Plant;
        var draw = SplitMix.For(seed, file.Code + " plates");

        // Volumes and valve flows differ from their plates by up to 15 %.
        double OffPlate() => 1 + Math.Clamp(0.07 * draw.NextNormal(), -0.15, 0.15);
        var loss = plant.HeatKw * 1.26 / (plant.Cycles - 1);
        return new PlantModel
        {
            VolumeL = plant.VolumeM3 * 1000 * OffPlate(),
            BleedLPerH = plant.BleedM3PerH * 1000 * OffPlate(),
            DriftLPerH = 0.02 * loss,
            HeatKw = plant.HeatKw,
            Load = plant.Hours is { } hours ? new LoadProfile { Months = plant.Months, Hours = hours } : new LoadProfile { Months = plant.Months },
            MakeUp = plant.MakeUp,
            UsualInhibitorMgPerL = file.Inhibitor.MgPerL,
            DepositAboveMgPerL = plant.DepositAboveCalcium ?? (0.98 * plant.Cycles * (plant.MakeUp.CalciumMgPerLAsCaCO3 ?? 0)),
            DepositPerHour = plant.DepositPerHour,
            Products = firm.PlantProducts,
            FeederKgPerH = (file.Halogen?.KgPerDay ?? 0) / 24,
            LeakOnlyWhileRunning = plant.LeakOnlyWhileRunning,
            StartCycles = plant.Cycles * 0.97,
        };
    }

    private static Drum DrumOf(string code, string product, double litres) => new()
    {
        Code = code,
        Product = product,
        Shape = DrumShape.VerticalCylinder,
        CapacityL = litres,
        HeightCm = litres switch { <= 25 => 40, <= 60 => 62, <= 100 => 75, <= 200 => 88, _ => 100 },
        UnusableL = litres switch { <= 25 => 1, <= 100 => 2, <= 200 => 4, _ => 20 },
        DeliveryDays = 7,
    };

    private static Programme Programme(DemoSiteFile file)
    {
        var plant = file.Plant;

        // Conductivity under-reads cycles: listed set points are cycles x make-up conductivity, the controller gets the scaled ones.
        var scale = 1 - (0.025 * (plant.Cycles - 1));
        var set = plant.SetPointUsPerCm;
        var (dose, inhibitor) = (file.Biocide, file.Inhibitor);
        var feeds = new List<Feed>
        {
            new()
            {
                Drum = "D-INH",
                Output = "inhibitor",
                Mode = inhibitor.Mode,
                TargetMgPerL = inhibitor.MgPerL,
                EveryL = inhibitor.EveryL,
                RunSeconds = inhibitor.RunSeconds,
                CycleMin = inhibitor.CycleMin,
                SharePercent = inhibitor.SharePercent,
                LongestFeedMin = inhibitor.LongestFeedMin,
            },
            new()
            {
                Drum = "D-B1",
                Output = "biocide-1",
                Mode = FeedMode.DosePlan,
                TargetMgPerL = dose.MgPerL,
                Weeks = dose.Weeks.Count > 0 ? dose.Weeks : [1, 2, 3, 4],
                Days = dose.Days,
                Starts = dose.Starts,
                RunMinutes = dose.RunMinutes,
                BleedDownFirst = new BleedDown { Minutes = 60, ToUsPerCm = Math.Round(0.94 * set * scale) },
                HoldBleedShutMin = dose.HoldBleedShutMin,
                InhibitorMeanwhile = InhibitorMeanwhile.Waits,
            },
        };
        if (file.Halogen is { } halogen)
        {
            feeds.Add(Halogen(halogen));
        }

        if (file.Acid is { } acid)
        {
            feeds.Add(new Feed
            {
                Drum = "D-ACID",
                Output = "acid",
                Mode = FeedMode.ByPh,
                SetPoint = acid.SetPointPh,
                Differential = acid.DifferentialPh,
                Unit = "[pH]",
                Direction = FeedDirection.Down,
                LongestFeedMin = 240,
            });
        }

        return new Programme
        {
            From = FirstProgramme,
            TargetCycles = plant.Cycles,
            SetPointUsPerCm = Math.Round(set * scale),
            DifferentialUsPerCm = Math.Round(0.02 * set * scale),
            BleedActs = BleedActs.OnRise,
            DisplayAverageSeconds = 5,
            HighAlarmUsPerCm = Math.Round(1.2 * set * scale),
            LowAlarmUsPerCm = Math.Round(0.75 * set * scale),
            LongestBleedMin = LongestBleed(file),
            PlanWeeks = 4,
            Ranges = Ranges(file, scale),
            Feeds = feeds,
            MakeUp = plant.MakeUp,
        };
    }

    private static Feed Halogen(DemoSiteFile.HalogenLines halogen) => halogen.Mode switch
    {
        FeedMode.Feeder => new Feed { Drum = "D-HAL", Mode = FeedMode.Feeder },
        FeedMode.DosePlan => new Feed
        {
            Drum = "D-HAL",
            Output = "halogen",
            Mode = FeedMode.DosePlan,
            TargetMgPerL = halogen.TargetMgPerL,
            Weeks = [1, 2, 3, 4],
            Days = halogen.Days,
            Starts = halogen.Starts,
            RunMinutes = halogen.RunMinutes,
            InhibitorMeanwhile = InhibitorMeanwhile.Feeds,
            WaitsFor = ["biocide-1"],
        },
        _ => new Feed
        {
            Drum = "D-HAL",
            Output = "halogen",
            Mode = FeedMode.ByOrp,
            SetPoint = halogen.SetPointMv,
            Differential = halogen.DifferentialMv,
            Unit = "mV",
            Direction = FeedDirection.Up,
            LongestFeedMin = 240,
            WaitsFor = ["biocide-1"],
        },
    };

    /// <summary>Twice the time the valve needs at average load from set point + hold rise to set point - differential.</summary>
    private static double LongestBleed(DemoSiteFile file)
    {
        var (plant, set) = (file.Plant, file.Plant.SetPointUsPerCm);
        var evaporation = plant.HeatKw * 1.26 / 1000;
        var solids = (evaporation + plant.BleedM3PerH) * (plant.MakeUp.ConductivityUsPerCm ?? 0);
        var fallPerHour = ((plant.BleedM3PerH * set) - solids) / plant.VolumeM3;
        var hours = (file.Biocide.HoldRiseUsPerCm + (0.02 * set)) / fallPerHour;
        return Math.Round(2 * hours * 60 / 5) * 5;
    }

    private static List<TestRange> Ranges(DemoSiteFile file, double scale)
    {
        var (plant, target) = (file.Plant, file.Inhibitor.MgPerL);
        var set = plant.SetPointUsPerCm * scale;
        var ranges = new List<TestRange>
        {
            new() { At = SamplePoints.Tower, Test = TestCodes.Conductivity, Low = Math.Round(0.85 * set), High = Math.Round(1.10 * set), Unit = "uS/cm" },
            new() { At = SamplePoints.Tower, Test = TestCodes.Inhibitor, Low = Math.Round(0.75 * target / 5) * 5, High = Math.Round(1.35 * target / 5) * 5, Unit = "mg/L" },
            new() { At = SamplePoints.Tower, Test = TestCodes.Ph, Low = 7.5, High = 9.2, Unit = "[pH]" },
        };
        if (file.Halogen is not null and not { Mode: FeedMode.DosePlan })
        {
            ranges.Add(new TestRange { At = SamplePoints.Tower, Test = TestCodes.FreeHalogen, Low = 0.1, High = 1.0, Unit = "mg/L" });
        }

        return ranges;
    }
}
