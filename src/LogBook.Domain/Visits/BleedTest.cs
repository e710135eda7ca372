namespace LogBook.Domain.Visits;

/// <summary>Bleed timed into a bucket.</summary>
public sealed record BleedTest
{
    /// <summary>Volume, L.</summary>
    public required double Litres { get; init; }

    /// <summary>Time, s.</summary>
    public required double Seconds { get; init; }
}
