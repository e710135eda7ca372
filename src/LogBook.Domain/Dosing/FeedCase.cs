using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Dosing;

/// <summary>What a feed's setting follows from. Which parts are needed depends on the mode.</summary>
public sealed record FeedCase
{
    /// <summary>How the feed is paced: by make-up volume, alongside the bleed, fixed share, share of the last bleed or dose plan.</summary>
    public required FeedMode Mode { get; init; }

    /// <summary>Pump output, L/h, measured (drawdown, drum per hour run) or rated.</summary>
    public required Estimate PumpLPerH { get; init; }

    /// <summary>Density of the product, kg/L.</summary>
    public double DensityKgPerL { get; init; } = 1;

    /// <summary>Cycles by an ion or corrected conductivity: by make-up volume.</summary>
    public Estimate? Cycles { get; init; }

    /// <summary>Make-up for each run, L: by make-up volume.</summary>
    public double? EveryL { get; init; }

    /// <summary>Water for each pulse of the meter, L: the controller counts whole pulses.</summary>
    public double? LitresPerPulse { get; init; }

    /// <summary>Flow of the open bleed valve, L/h: alongside the bleed, share of the last bleed.</summary>
    public Estimate? BleedLPerH { get; init; }

    /// <summary>Share of the liquid loss that goes through the bleed valve, above 0, up to 1; drift and leaks take the rest.</summary>
    public double BleedShareOfLoss { get; init; } = 1;

    /// <summary>Minutes of the repeating time: fixed share.</summary>
    public double? CycleMin { get; init; }

    /// <summary>Mean liquid loss, L/h: fixed share.</summary>
    public Estimate? LossLPerH { get; init; }

    /// <summary>System volume, L: dose plan.</summary>
    public Estimate? VolumeL { get; init; }
}
