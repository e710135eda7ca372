namespace LogBook.Domain.Visits;

/// <summary>Hours run since reset of one output.</summary>
public sealed record HoursReading
{
    /// <summary>Code of the output.</summary>
    public required string Output { get; init; }

    /// <summary>Hours, h.</summary>
    public required double Hours { get; init; }

    /// <summary>Restarted from zero since the last visit.</summary>
    public bool? Reset { get; init; }

    /// <summary>Hours just before a reset at this visit.</summary>
    public double? Before { get; init; }

    /// <summary>Hours just after a reset at this visit.</summary>
    public double? After { get; init; }

    /// <summary>Hours as first typed, h, where they were asked for again; the same as the hours where reading again confirmed them.</summary>
    public double? FirstHours { get; init; }
}
