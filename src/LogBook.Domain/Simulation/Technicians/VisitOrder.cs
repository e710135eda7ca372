using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation.Technicians;

/// <summary>A visit to be made: who, when, with which instruments, and what the story asks for.</summary>
public sealed record VisitOrder
{
    /// <summary>Arrival, UTC.</summary>
    public required DateTime ArrivedUtc { get; init; }

    /// <summary>Code of the technician.</summary>
    public required string Technician { get; init; }

    /// <summary>Name signed.</summary>
    public required string TechnicianName { get; init; }

    /// <summary>Code of the hand conductivity meter.</summary>
    public required string HandMeter { get; init; }

    /// <summary>Common error of that meter now, a share of 1.</summary>
    public double HandMeterError { get; init; }

    /// <summary>Reagent lot in use for each test.</summary>
    public IReadOnlyDictionary<string, string> Lots { get; init; } = new Dictionary<string, string>();

    /// <summary>Result over truth for each lot; 1 when absent.</summary>
    public IReadOnlyDictionary<string, double> LotFactors { get; init; } = new Dictionary<string, double>();

    /// <summary>Why somebody comes.</summary>
    public VisitKind Kind { get; init; } = VisitKind.Routine;

    /// <summary>How he works on this visit.</summary>
    public TechnicianKind Works { get; init; } = TechnicianKind.Honest;

    /// <summary>What the story asks for.</summary>
    public IReadOnlyList<TechnicianAct> Acts { get; init; } = [];

    /// <summary>Days to the next planned visit.</summary>
    public double NextInDays { get; init; } = 28;

    /// <summary>Longest interval between laboratory samples for Legionella in force, days.</summary>
    public double LegionellaEveryDays { get; init; } = 90;

    /// <summary>Longest interval between colony counts in force, days.</summary>
    public double ColonyCountEveryDays { get; init; } = 30;

    /// <summary>Standard deviation of a drum level as read, a share of its height.</summary>
    public double DrumLevelShare { get; init; } = 0.01;

    /// <summary>Code of the laboratory.</summary>
    public string Laboratory { get; init; } = "";

    /// <summary>Person of the customer who signs; absent when nobody could.</summary>
    public string? CustomerName { get; init; }
}
