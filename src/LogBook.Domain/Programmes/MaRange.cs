namespace LogBook.Domain.Programmes;

/// <summary>Scaling of a 4-20 mA output.</summary>
public sealed record MaRange
{
    /// <summary>Value at 4 mA.</summary>
    public required double At4Ma { get; init; }

    /// <summary>Value at 20 mA.</summary>
    public required double At20Ma { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }
}
