namespace LogBook.Domain.Simulation;

/// <summary>What went in and out since the start. Water L; amounts mg (cycles and conductance in their own unit times L).</summary>
public sealed record PlantBalance
{
    /// <summary>Make-up, L.</summary>
    public required double MakeUpL { get; init; }

    /// <summary>Evaporation, L.</summary>
    public required double EvaporatedL { get; init; }

    /// <summary>Bleed, L.</summary>
    public required double BledL { get; init; }

    /// <summary>Drift and leaks, L.</summary>
    public required double LostL { get; init; }

    /// <summary>In the water at the start, by substance.</summary>
    public required IReadOnlyList<double> Start { get; init; }

    /// <summary>Brought by make-up and feeds, by substance.</summary>
    public required IReadOnlyList<double> In { get; init; }

    /// <summary>Left with liquid water, by substance.</summary>
    public required IReadOnlyList<double> Out { get; init; }

    /// <summary>Decayed or deposited, by substance.</summary>
    public required IReadOnlyList<double> Gone { get; init; }

    /// <summary>In the water now, by substance.</summary>
    public required IReadOnlyList<double> Now { get; init; }
}
