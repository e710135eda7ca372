namespace LogBook.Domain.Findings;

/// <summary>One figure of the evidence.</summary>
public sealed record Evidence
{
    /// <summary>What it is, in words.</summary>
    public required string What { get; init; }

    /// <summary>Value.</summary>
    public double? Value { get; init; }

    /// <summary>Lower end of the 95 % interval.</summary>
    public double? Low { get; init; }

    /// <summary>Upper end of the 95 % interval.</summary>
    public double? High { get; init; }

    /// <summary>Lower threshold used.</summary>
    public double? LimitLow { get; init; }

    /// <summary>Upper threshold used.</summary>
    public double? LimitHigh { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }
}
