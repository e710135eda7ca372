using LogBook.Domain.Findings;

namespace LogBook.Domain.Visits;

/// <summary>Something seen, in words.</summary>
public sealed record Observation
{
    /// <summary>What it concerns.</summary>
    public required string About { get; init; }

    /// <summary>What was seen.</summary>
    public required string Text { get; init; }

    /// <summary>How soon it wants somebody.</summary>
    public Severity? Severity { get; init; }
}
