namespace LogBook.Domain.Simulation.Technicians;

/// <summary>How a technician works.</summary>
public enum TechnicianKind
{
    /// <summary>Does the whole round at the dial; 0.4 of 1,000 fields carry a slip (trade guide, source 30).</summary>
    Honest,

    /// <summary>Short of time: leaves tests out, does not wait for the probe, cleans nothing.</summary>
    Hurried,

    /// <summary>Reads nothing and writes down what looks right.</summary>
    Inventing,
}
