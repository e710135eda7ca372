namespace LogBook.Domain.Visits;

/// <summary>An output's switch as found and as left.</summary>
public sealed record SwitchReading
{
    /// <summary>Code of the output.</summary>
    public required string Output { get; init; }

    /// <summary>As found.</summary>
    public SwitchPosition? Found { get; init; }

    /// <summary>As left.</summary>
    public SwitchPosition? Left { get; init; }

    /// <summary>Why it was left otherwise than automatic.</summary>
    public string? Reason { get; init; }
}
