namespace LogBook.Domain.Sites;

/// <summary>A fixed probe.</summary>
public sealed record Probe
{
    /// <summary>Unique within the system.</summary>
    public required string Code { get; init; }

    /// <summary>What it measures.</summary>
    public required ProbeKind Of { get; init; }

    /// <summary>Day this probe went in, when renewed.</summary>
    public DateOnly? From { get; init; }
}
