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

    /// <summary>Part of <see cref="In"/> that came from products, pumped or poured, by substance.</summary>
    public required IReadOnlyList<double> Fed { get; init; }

    /// <summary>Pumped while no water circulated, by substance: it lies in the line and treats nothing.</summary>
    public required IReadOnlyList<double> Stranded { get; init; }

    /// <summary>The drums, in the order of the set-up.</summary>
    public required IReadOnlyList<DrumBalance> Drums { get; init; }
}
