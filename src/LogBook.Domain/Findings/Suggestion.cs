namespace LogBook.Domain.Findings;

/// <summary>A cause that the evidence suggests.</summary>
public sealed record Suggestion
{
    /// <summary>A kind, or load, season, reading, laboratory.</summary>
    public required string Cause { get; init; }

    /// <summary>In words.</summary>
    public required string Text { get; init; }
}
