using LogBook.Bank.Faults;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Sites;

namespace LogBook.Bank.Firms;

/// <summary>One random system: the plant as it truly is, the set-up people know, its visits and what goes wrong.</summary>
internal sealed class BankSystem
{
    public required ulong Seed { get; init; }

    public required Site Site { get; init; }

    /// <summary>Everything the plant has; the simulation and the technician in the room see this.</summary>
    public required WaterSystem Full { get; init; }

    /// <summary>What is on file: parts of it may be missing.</summary>
    public required WaterSystem Known { get; init; }

    public required PlantModel Model { get; init; }

    public required BankTechnician Technician { get; init; }

    public required PaperHabits Habits { get; init; }

    public required IReadOnlyList<DateOnly> Days { get; init; }

    public required int EveryDays { get; init; }

    /// <summary>What honest people do anyway: cleaning after a stop, an outlier now and then.</summary>
    public required IReadOnlyList<TechnicianAct> Acts { get; init; }

    /// <summary>Mean use of each drum, L a day, as designed.</summary>
    public required IReadOnlyDictionary<string, double> DesignLPerDay { get; init; }

    /// <summary>Calcium of the make-up before its softener, mg/L as CaCO3.</summary>
    public required double RawCalcium { get; init; }

    /// <summary>Mean loss as liquid, L a day, as designed.</summary>
    public required double LossLPerDay { get; init; }

    public required TimeZoneInfo Zone { get; init; }

    public List<Fault> Faults { get; } = [];

    public Programme Programme => Full.Programmes[0];

    public double InhibitorTarget => Programme.Feeds[0].TargetMgPerL!.Value;

    public string InhibitorDrum => Programme.Feeds[0].Drum;

    public double HalfLifeHours => 0.693 * Model.VolumeL / (LossLPerDay / 24);
}
