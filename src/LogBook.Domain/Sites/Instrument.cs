namespace LogBook.Domain.Sites;

/// <summary>A portable instrument.</summary>
public sealed record Instrument
{
    /// <summary>Unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>What it is.</summary>
    public required InstrumentKind Kind { get; init; }

    /// <summary>Maker's or own name.</summary>
    public string? Name { get; init; }

    /// <summary>Serial number.</summary>
    public string? Serial { get; init; }

    /// <summary>Checks in a standard.</summary>
    public IReadOnlyList<InstrumentCheck> Checks { get; init => field = value ?? []; } = [];
}
