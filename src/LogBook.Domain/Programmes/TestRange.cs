namespace LogBook.Domain.Programmes;

/// <summary>Range aimed at, inclusive at both ends.</summary>
public sealed record TestRange
{
    /// <summary>Sample point.</summary>
    public required string At { get; init; }

    /// <summary>Code of the test.</summary>
    public required string Test { get; init; }

    /// <summary>Lower end; none means open.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end; none means open.</summary>
    public double? High { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Basis, when not the test's own.</summary>
    public string? Basis { get; init; }
}
