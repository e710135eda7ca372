namespace LogBook.Domain.Visits;

/// <summary>A water meter at one visit, in the meter's unit.</summary>
public sealed record MeterReading
{
    /// <summary>Code of the meter.</summary>
    public required string Meter { get; init; }

    /// <summary>Count on the dial.</summary>
    public double? Dial { get; init; }

    /// <summary>The controller's total.</summary>
    public double? Total { get; init; }

    /// <summary>Another register since the last visit.</summary>
    public bool? Replaced { get; init; }

    /// <summary>Total restarted from zero since the last visit.</summary>
    public bool? Reset { get; init; }

    /// <summary>Old register at its end.</summary>
    public double? OldFinal { get; init; }

    /// <summary>New register at its start.</summary>
    public double? NewStart { get; init; }

    /// <summary>Day of the exchange.</summary>
    public DateOnly? ReplacedOn { get; init; }

    /// <summary>Total just before a reset at this visit.</summary>
    public double? Before { get; init; }

    /// <summary>Total just after a reset at this visit.</summary>
    public double? After { get; init; }

    /// <summary>Count on the dial as first typed, where it was asked for again; the same as the dial where reading again confirmed it.</summary>
    public double? FirstDial { get; init; }

    /// <summary>The controller's total as first typed, where it was asked for again; the same as the total where reading again confirmed it.</summary>
    public double? FirstTotal { get; init; }
}
