using LogBook.Domain.Exchange;

namespace LogBook.Domain.Visits;

/// <summary>Product added by hand.</summary>
public sealed record Addition
{
    /// <summary>Code of the product.</summary>
    public required string Product { get; init; }

    /// <summary>How much.</summary>
    public required double Amount { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }

    /// <summary>Where to.</summary>
    public string? To { get; init; }

    /// <summary>When.</summary>
    public Moment? At { get; init; }

    /// <summary>Why.</summary>
    public string? Reason { get; init; }
}
