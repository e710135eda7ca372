using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Simulation;

/// <summary>A small tower: 10 m3, 500 kW, 4.5 cycles of 300 µS/cm; set point scaled by 1 - 0.025 (4.5 - 1).</summary>
internal static class SimulatedCollege
{
    public static WaterSystem System { get; } = new()
    {
        Site = "YAF-1",
        Code = "CT-1",
        Name = "Cooling tower 1",
        Kind = SystemKind.OpenRecirculating,
        VolumeL = 10000,
        BleedValveLPerH = 1000,
        Outputs =
        [
            new Output { Code = "bleed", Drives = OutputDrives.Bleed },
            new Output { Code = "inhibitor", Drives = OutputDrives.Feed },
            new Output { Code = "biocide-1", Drives = OutputDrives.Feed },
        ],
        Drums =
        [
            new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62, UnusableL = 2 },
            new Drum { Code = "D-B1", Product = "N-15", Shape = DrumShape.VerticalCylinder, CapacityL = 200, HeightCm = 80, UnusableL = 1 },
        ],
        Pumps =
        [
            new Pump { Code = "P-INH", Drum = "D-INH", Output = "inhibitor", RatedLPerH = 1.5 },
            new Pump { Code = "P-B1", Drum = "D-B1", Output = "biocide-1", RatedLPerH = 3 },
        ],
    };

    public static PlantModel Model { get; } = new()
    {
        VolumeL = 10000,
        BleedLPerH = 1000,
        HeatKw = 500,
        MakeUp = new MakeUpWater { ConductivityUsPerCm = 300, CalciumMgPerLAsCaCO3 = 82, AlkalinityMgPerLAsCaCO3 = 75, ChlorideMgPerL = 23, SilicaMgPerL = 8 },
        UsualInhibitorMgPerL = 100,
        DepositAboveMgPerL = 340,
        DepositPerHour = 0.02,
        StartCycles = 4.4,
        Products =
        [
            new PlantProduct { Code = "P-40", Becomes = Substance.Inhibitor, DensityKgPerL = 1.12 },
            new PlantProduct { Code = "N-15", Becomes = Substance.Biocide, DensityKgPerL = 1.05, HalfLifeH = 30, ContactHours = 4 },
            new PlantProduct { Code = "H-12", Becomes = Substance.Halogen, DensityKgPerL = 1.2, Share = 0.12, HalfLifeH = 6, ChloridePerMg = 1 },
        ],
    };

    public static Programme Programme { get; } = new()
    {
        From = new DateOnly(2025, 6, 30),
        TargetCycles = 4.5,
        SetPointUsPerCm = 1232,
        DifferentialUsPerCm = 27,
        BleedActs = BleedActs.OnRise,
        DisplayAverageSeconds = 5,
        HighAlarmUsPerCm = 1480,
        LongestBleedMin = 140,
        Feeds =
        [
            new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.ByMakeUpVolume, EveryL = 1000, RunSeconds = 47.6, TargetMgPerL = 100 },
            new Feed
            {
                Drum = "D-B1",
                Output = "biocide-1",
                Mode = FeedMode.DosePlan,
                Weeks = [1, 2, 3, 4],
                Days = [Weekday.Tuesday, Weekday.Friday],
                Starts = ["21:30"],
                RunMinutes = 19,
                BleedDownFirst = new BleedDown { Minutes = 60, ToUsPerCm = 1150 },
                HoldBleedShutMin = 240,
                InhibitorMeanwhile = InhibitorMeanwhile.Waits,
            },
        ],
    };

    public static PlantSimulation Plant(ulong seed, Programme? programme = null, DateTime? start = null) => new(
        Model, System, programme ?? Programme, TimeZoneInfo.FindSystemTimeZoneById("Europe/London"), start ?? new DateTime(2025, 7, 1, 0, 0, 0, DateTimeKind.Utc), seed);
}
