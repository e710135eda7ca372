namespace LogBook.Domain.Estimates;

/// <summary>How a water meter works, as far as its uncertainty goes.</summary>
public enum WaterMeterKind
{
    /// <summary>Displacement or turbine meter.</summary>
    Meter,

    /// <summary>Paddle wheel.</summary>
    PaddleWheel,
}
