namespace LogBook.Domain.Rounds;

/// <summary>What one visit to one system tells about the meters, lots and people it shares with other systems.</summary>
/// <param name="VisitId">The visit.</param>
/// <param name="At">Arrival, UTC.</param>
/// <param name="Technician">Code of the person.</param>
public sealed record VisitClues(Guid VisitId, DateTime At, string Technician)
{
    /// <summary>Probes compared with a hand meter.</summary>
    public IReadOnlyList<ProbeClue> Probes { get; init; } = [];

    /// <summary>Residuals measured.</summary>
    public IReadOnlyList<LotClue> Lots { get; init; } = [];

    /// <summary>Signs that the record wants a second look.</summary>
    public IReadOnlyList<SignClue> Signs { get; init; } = [];

    /// <summary>Whether there is nothing in it.</summary>
    internal bool IsEmpty => Probes.Count == 0 && Lots.Count == 0 && Signs.Count == 0;
}
