namespace LogBook.Domain.Programmes;

/// <summary>A test that a firm adds to the standard ones.</summary>
public sealed record TestDefinition
{
    /// <summary>Unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>Name people use.</summary>
    public required string Name { get; init; }

    /// <summary>What the result is expressed as.</summary>
    public string? Basis { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Smallest step.</summary>
    public double? Step { get; init; }
}
