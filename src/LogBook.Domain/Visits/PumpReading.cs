namespace LogBook.Domain.Visits;

/// <summary>Stroke and speed of a pump, percent.</summary>
public sealed record PumpReading
{
    /// <summary>Code of the pump.</summary>
    public required string Pump { get; init; }

    /// <summary>Stroke as found, %.</summary>
    public double? StrokeFound { get; init; }

    /// <summary>Stroke as left, %.</summary>
    public double? StrokeLeft { get; init; }

    /// <summary>Speed as found, %.</summary>
    public double? SpeedFound { get; init; }

    /// <summary>Speed as left, %.</summary>
    public double? SpeedLeft { get; init; }
}
