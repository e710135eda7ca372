namespace LogBook.Domain.Visits;

/// <summary>Current output read at the visit.</summary>
public sealed record MaReading
{
    /// <summary>Current or value.</summary>
    public required double Found { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }
}
