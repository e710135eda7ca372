namespace LogBook.Domain.Visits;

/// <summary>An alarm seen at the visit.</summary>
public sealed record AlarmReading
{
    /// <summary>Text as shown.</summary>
    public required string Text { get; init; }

    /// <summary>Code of the output it belongs to.</summary>
    public string? Output { get; init; }

    /// <summary>Still standing.</summary>
    public bool? Standing { get; init; }
}
