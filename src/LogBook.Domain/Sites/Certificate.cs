namespace LogBook.Domain.Sites;

/// <summary>A certificate held by a person.</summary>
public sealed record Certificate
{
    /// <summary>What it certifies.</summary>
    public required string Name { get; init; }

    /// <summary>Its number.</summary>
    public string? Number { get; init; }

    /// <summary>Last day of validity.</summary>
    public DateOnly? Expires { get; init; }
}
