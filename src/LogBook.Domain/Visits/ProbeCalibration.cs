namespace LogBook.Domain.Visits;

/// <summary>How a probe was calibrated.</summary>
public sealed record ProbeCalibration
{
    /// <summary>Hand meter or standard.</summary>
    public CalibrationAgainst? Against { get; init; }

    /// <summary>Value of the standard.</summary>
    public double? StandardValue { get; init; }

    /// <summary>Lot of the standard.</summary>
    public string? StandardLot { get; init; }

    /// <summary>Factor before.</summary>
    public double? FactorBefore { get; init; }

    /// <summary>Factor after.</summary>
    public double? FactorAfter { get; init; }

    /// <summary>Why.</summary>
    public string? Reason { get; init; }
}
