namespace LogBook.Application.MoveIn;

/// <summary>What a column holds, and in what unit; kept with the heading by which it is known again.</summary>
public sealed record ColumnMeaning
{
    /// <summary>What it holds.</summary>
    public ColumnKind Kind { get; init; }

    /// <summary>Code of the test, drum, meter or output.</summary>
    public string? Code { get; init; }

    /// <summary>Sample point of a test; null while nobody has said.</summary>
    public string? At { get; init; }

    /// <summary>UCUM unit; null where the kind needs none, or while nobody has said.</summary>
    public string? Unit { get; init; }
}
