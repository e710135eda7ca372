namespace LogBook.Domain.Sites;

/// <summary>A planned or past stop, both days inclusive.</summary>
public sealed record Stop
{
    /// <summary>First day.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day.</summary>
    public required DateOnly To { get; init; }

    /// <summary>Why.</summary>
    public string? Reason { get; init; }
}
