namespace LogBook.Domain.Programmes;

/// <summary>Bleeding before a dose; ends at whichever comes first.</summary>
public sealed record BleedDown
{
    /// <summary>Longest time, min.</summary>
    public double? Minutes { get; init; }

    /// <summary>Conductivity to reach, µS/cm.</summary>
    public double? ToUsPerCm { get; init; }
}
