namespace LogBook.Application.History;

/// <summary>What happened, as a mark on the time axis; each has its own row and its own shape.</summary>
public enum HistoryMarkKind
{
    /// <summary>A setting was changed at a visit, or found changed, or another programme began.</summary>
    Settings,

    /// <summary>Product was delivered, a container exchanged, product added by hand.</summary>
    Delivery,

    /// <summary>Cleaning, disinfection, drain and refill.</summary>
    Cleaning,

    /// <summary>Probe calibrated, cleaned or renewed.</summary>
    Calibration,

    /// <summary>A result that came in later than its sample was taken.</summary>
    Result,

    /// <summary>Stop, start and whatever else happened.</summary>
    Event,

    /// <summary>A photo was taken.</summary>
    Photo,

    /// <summary>A finding, on the day it was first seen.</summary>
    Finding,
}
