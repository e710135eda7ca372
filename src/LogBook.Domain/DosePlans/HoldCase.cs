using LogBook.Domain.Cycles;
using LogBook.Domain.Estimates;

namespace LogBook.Domain.DosePlans;

/// <summary>A dose with the bleed held shut after it: what the water does follows from these.</summary>
public sealed record HoldCase
{
    /// <summary>Conductivity at which the bleed-down begins, or the hold where there is none: the set point, µS/cm.</summary>
    public required double StartUsPerCm { get; init; }

    /// <summary>Conductivity of the make-up, µS/cm at 25 °C.</summary>
    public required Estimate MakeUpUsPerCm { get; init; }

    /// <summary>How far conductivity under-reads cycles: see <see cref="ConductivityLaw"/>; 0 where it is followed as if it were conserved.</summary>
    public double Bend { get; init; } = ConductivityLaw.UsualBend;

    /// <summary>Evaporation in the hours of the hold, busy season, L/h.</summary>
    public required Estimate EvaporationLPerH { get; init; }

    /// <summary>Drift and leaks, which go on during the hold, L/h.</summary>
    public double OtherLossLPerH { get; init; }

    /// <summary>Volume of the circuit, L.</summary>
    public required Estimate VolumeL { get; init; }

    /// <summary>Flow of the open bleed valve, L/h; null where it is not known and nothing can be bled down.</summary>
    public double? BleedLPerH { get; init; }

    /// <summary>Conductivity to bleed down to first, µS/cm; null for none.</summary>
    public double? BleedDownToUsPerCm { get; init; }

    /// <summary>Longest bleed-down, h; null for as long as it takes.</summary>
    public double? BleedDownHours { get; init; }

    /// <summary>High alarm, µS/cm; null where there is none.</summary>
    public double? HighAlarmUsPerCm { get; init; }

    /// <summary>Hours of feeding, during which the bleed is shut too.</summary>
    public double FeedHours { get; init; }

    /// <summary>Hold wanted from the end of the feed, h.</summary>
    public required double HoldHours { get; init; }

    /// <summary>Contact time asked by the label, h; null where none is on file.</summary>
    public double? LabelContactHours { get; init; }

    /// <summary>One dose, mg/L as product in the volume.</summary>
    public double DoseMgPerL { get; init; }

    /// <summary>Decay by hydrolysis, uptake and stripping, 1/h, not negative.</summary>
    public double DecayPerHour { get; init; }
}
