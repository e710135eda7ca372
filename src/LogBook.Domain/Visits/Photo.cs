using LogBook.Domain.Exchange;

namespace LogBook.Domain.Visits;

/// <summary>A photo, by reference.</summary>
public sealed record Photo
{
    /// <summary>Identity.</summary>
    public required Guid Id { get; init; }

    /// <summary>Field or place it belongs to.</summary>
    public required string Of { get; init; }

    /// <summary>Hash of the picture.</summary>
    public string? Sha256 { get; init; }

    /// <summary>When.</summary>
    public Moment? TakenAt { get; init; }
}
