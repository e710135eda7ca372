namespace LogBook.Domain.Visits;

/// <summary>Who signed, or why nobody did.</summary>
public sealed record Signature
{
    /// <summary>Whose.</summary>
    public required SignedBy By { get; init; }

    /// <summary>Name.</summary>
    public string? Name { get; init; }

    /// <summary>Role.</summary>
    public string? Role { get; init; }

    /// <summary>Why it is missing.</summary>
    public string? AbsentReason { get; init; }
}
