namespace LogBook.Application.Demo;

/// <summary>Kinds that must not be a headline ("plan" or "act") for a time.</summary>
public sealed record DemoForbidden
{
    /// <summary>Kinds of finding.</summary>
    public required IReadOnlyList<string> Kinds { get; init; }

    /// <summary>First day on which they would be wrong.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day on which they would be wrong.</summary>
    public required DateOnly Until { get; init; }

    /// <summary>Bearable while one of these kinds is a headline at the same site.</summary>
    public IReadOnlyList<string> UnlessWith { get; init; } = [];

    /// <summary>Sites it is about, for an answer about an instrument or a lot; else the answer's own site.</summary>
    public IReadOnlyList<string> Sites { get; init; } = [];
}
