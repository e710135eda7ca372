namespace LogBook.Domain.Visits;

/// <summary>Dilution before a test: result is reading times total over sample.</summary>
public sealed record Dilution
{
    /// <summary>Sample volume.</summary>
    public required double Sample { get; init; }

    /// <summary>Total volume, same unit.</summary>
    public required double Total { get; init; }
}
