using LogBook.Domain.Sites;

namespace LogBook.Domain.Visits;

/// <summary>A probe compared with a reference on one visit.</summary>
public sealed record ProbeReading
{
    /// <summary>Code of the probe; may be absent where there is one.</summary>
    public string? Probe { get; init; }

    /// <summary>What it measures; conductivity when absent.</summary>
    public ProbeKind? Of { get; init; }

    /// <summary>Minutes the reference was in the water.</summary>
    public double? SettledMin { get; init; }

    /// <summary>Display before anything was touched.</summary>
    public required double AsFound { get; init; }

    /// <summary>Reference on the same water.</summary>
    public double? Reference { get; init; }

    /// <summary>Code of the reference instrument.</summary>
    public string? Instrument { get; init; }

    /// <summary>Display after cleaning; none means not cleaned.</summary>
    public double? AfterCleaning { get; init; }

    /// <summary>Display after any calibration.</summary>
    public double? AsLeft { get; init; }

    /// <summary>Whether it was calibrated.</summary>
    public bool? Calibrated { get; init; }

    /// <summary>How.</summary>
    public ProbeCalibration? Calibration { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }
}
