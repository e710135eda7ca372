namespace LogBook.Domain.Simulation;

/// <summary>What went in and out of a drum since the start, L: start + added = drawn + now.</summary>
public sealed record DrumBalance
{
    /// <summary>Code of the drum.</summary>
    public required string Drum { get; init; }

    /// <summary>In it at the start, L.</summary>
    public required double StartL { get; init; }

    /// <summary>Filled in less taken out by people, L; negative when more was taken out.</summary>
    public required double AddedL { get; init; }

    /// <summary>Drawn by its pumps, L.</summary>
    public required double DrawnL { get; init; }

    /// <summary>In it now, L.</summary>
    public required double NowL { get; init; }
}
