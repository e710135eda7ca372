namespace LogBook.Domain.Simulation;

/// <summary>One dose of the plan; what did not happen within the weeks run is absent.</summary>
public sealed record LookAheadDose
{
    /// <summary>Code of its output.</summary>
    public required string Output { get; init; }

    /// <summary>Code of its product.</summary>
    public required string? Product { get; init; }

    /// <summary>When the plan calls it.</summary>
    public required DateTime Due { get; init; }

    /// <summary>Bleeding before it began.</summary>
    public required DateTime? BleedDownFrom { get; init; }

    /// <summary>Feeding began.</summary>
    public required DateTime? Started { get; init; }

    /// <summary>Conductivity then.</summary>
    public required double? StartUsPerCm { get; init; }

    /// <summary>Feeding ended.</summary>
    public required DateTime? Ended { get; init; }

    /// <summary>The bleed was released.</summary>
    public required DateTime? HeldUntil { get; init; }

    /// <summary>Conductivity then.</summary>
    public required double? EndUsPerCm { get; init; }
}
