namespace LogBook.Application.Demo;

/// <summary>A site at which nothing is wrong.</summary>
public sealed record ReplayControl
{
    /// <summary>Site.</summary>
    public required string Site { get; init; }

    /// <summary>Headlines that are bearable in the whole time.</summary>
    public required int Most { get; init; }

    /// <summary>Headlines there, true dues not counted.</summary>
    public required IReadOnlyList<Headline> Flags { get; init; }
}
