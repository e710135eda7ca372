namespace LogBook.Domain.Programmes;

/// <summary>How a product shows in a test.</summary>
public sealed record ProductResidual
{
    /// <summary>Code of the test.</summary>
    public required string Test { get; init; }

    /// <summary>Result in mg/L for each mg/L of product.</summary>
    public required double MgPerLPerMgProduct { get; init; }
}
