using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Simulation;

/// <summary>Phases of a planned dose.</summary>
internal enum DosePhase
{
    None,
    BleedDown,
    Feeding,
    Hold,
}

/// <summary>A feed as the controller runs it. Hours since the start.</summary>
internal sealed class FeedState
{
    public required Feed Feed { get; init; }

    public required OutputState Target { get; init; }

    public string Output => Target.Code;

    /// <summary>Run time still owed, h (by volume, share of last bleed).</summary>
    public double OwedH { get; set; }

    /// <summary>Litres on the controller's count at which the next run falls due.</summary>
    public double NextAtL { get; set; }

    /// <summary>Run time alongside the present bleed, or in the present call of a measured feed, h.</summary>
    public double RunH { get; set; }

    /// <summary>Measured feeds: calling.</summary>
    public bool Calls { get; set; }

    /// <summary>Next planned start, h.</summary>
    public double NextStart { get; set; } = double.PositiveInfinity;

    /// <summary>Wanted and allowed now.</summary>
    public bool Wants { get; set; }
}

/// <summary>An output with its switch, counter and pump.</summary>
internal sealed class OutputState
{
    public required string Code { get; init; }

    public SwitchState Switch { get; set; }

    public bool On { get; set; }

    /// <summary>Some feed wants it now.</summary>
    public bool Wanted { get; set; }

    public double Hours { get; set; }

    public double LastOn { get; set; } = double.NegativeInfinity;

    public Pump? Pump { get; set; }

    public DrumState? Drum { get; set; }

    public Ramp PumpShare { get; set; } = Ramp.Constant(1);

    public double PumpBias { get; set; } = 1;

    /// <summary>A feeder of solid product has no pump; what it gives off, L/h.</summary>
    public double FeederLPerH { get; set; }
}

/// <summary>Position of a switch.</summary>
internal enum SwitchState
{
    Automatic,
    ForcedOn,
    ForcedOff,
}

/// <summary>A drum as it truly is, L.</summary>
internal sealed class DrumState
{
    public required Drum Drum { get; init; }

    public required double StartL { get; init; }

    public required double Litres { get; set; }

    public double AddedL { get; set; }

    public double DrawnL { get; set; }

    /// <summary>That it ran down is in the log already.</summary>
    public bool EmptyNoted { get; set; }

    public required string Product { get; set; }

    /// <summary>What the plant knows of the product; none for one that does not matter to the water.</summary>
    public PlantProduct? Known { get; set; }

    public double UsableL => Math.Max(0, Litres - (Drum.UnusableL ?? 0));
}
