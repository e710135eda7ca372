namespace LogBook.Domain.Sites;

/// <summary>Part of the year, month and day, both inclusive.</summary>
public sealed record Season
{
    /// <summary>First day, MM-DD.</summary>
    public required string From { get; init; }

    /// <summary>Last day, MM-DD.</summary>
    public required string To { get; init; }
}
