using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.SetPoints;

/// <summary>A set point with what it follows from.</summary>
public sealed record SetPointProposal
{
    /// <summary>Set point, µS/cm.</summary>
    public required Worked SetPoint { get; init; }

    /// <summary>Differential, µS/cm.</summary>
    public required double DifferentialUsPerCm { get; init; }

    /// <summary>Cycles at the set point: the target, or fewer where an ion or the permit limits them.</summary>
    public required double CyclesAtSetPoint { get; init; }

    /// <summary>Cycles half a differential below the set point, where the water stands on average.</summary>
    public required Computed<double> MeanCycles { get; init; }

    /// <summary>Ions with a limit and make-up readings, the scarcest first.</summary>
    public required IReadOnlyList<IonRoom> Rooms { get; init; }

    /// <summary>What limits: the ion, conductivity of the discharge, or null where the target cycles do.</summary>
    public required IonLimit? Limiting { get; init; }

    /// <summary>Limits whose ion was not measured in the make-up: nobody knows whether they hold.</summary>
    public required IReadOnlyList<IonLimit> NotKnown { get; init; }
}
