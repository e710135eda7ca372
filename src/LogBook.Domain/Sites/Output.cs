namespace LogBook.Domain.Sites;

/// <summary>An output of the controller.</summary>
public sealed record Output
{
    /// <summary>Unique within the system.</summary>
    public required string Code { get; init; }

    /// <summary>What it switches.</summary>
    public required OutputDrives Drives { get; init; }
}
