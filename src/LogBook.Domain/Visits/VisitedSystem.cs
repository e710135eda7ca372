namespace LogBook.Domain.Visits;

/// <summary>What was found and done on one system at a visit.</summary>
public sealed record VisitedSystem
{
    /// <summary>Code of the system.</summary>
    public required string System { get; init; }

    /// <summary>Whether it was circulating.</summary>
    public bool? Running { get; init; }

    /// <summary>Whether the plant was in use.</summary>
    public bool? InUse { get; init; }

    /// <summary>Controller clock minus true time, min.</summary>
    public double? ClockOffByMin { get; init; }

    /// <summary>Week of the plan the controller showed.</summary>
    public int? ProgrammeWeek { get; init; }

    /// <summary>Tests.</summary>
    public IReadOnlyList<Reading> Readings { get; init; } = [];

    /// <summary>Probe checks.</summary>
    public IReadOnlyList<ProbeReading> Probes { get; init; } = [];

    /// <summary>Water meters.</summary>
    public IReadOnlyList<MeterReading> Meters { get; init; } = [];

    /// <summary>Drums.</summary>
    public IReadOnlyList<DrumReading> Drums { get; init; } = [];

    /// <summary>Hours run, by output.</summary>
    public IReadOnlyList<HoursReading> HoursRun { get; init; } = [];

    /// <summary>Stroke and speed.</summary>
    public IReadOnlyList<PumpReading> Pumps { get; init; } = [];

    /// <summary>Pump outputs measured.</summary>
    public IReadOnlyList<Drawdown> Drawdowns { get; init; } = [];

    /// <summary>Bleed timed into a bucket.</summary>
    public BleedTest? BleedTest { get; init; }

    /// <summary>Switches.</summary>
    public IReadOnlyList<SwitchReading> Switches { get; init; } = [];

    /// <summary>Settings.</summary>
    public IReadOnlyList<SettingReading> Settings { get; init; } = [];

    /// <summary>Current output.</summary>
    public MaReading? MaOutput { get; init; }

    /// <summary>Product added by hand.</summary>
    public IReadOnlyList<Addition> Additions { get; init; } = [];

    /// <summary>What happened.</summary>
    public IReadOnlyList<VisitEvent> Events { get; init; } = [];

    /// <summary>Alarms.</summary>
    public IReadOnlyList<AlarmReading> Alarms { get; init; } = [];

    /// <summary>What was seen.</summary>
    public IReadOnlyList<Observation> Observations { get; init; } = [];

    /// <summary>What is to be done.</summary>
    public IReadOnlyList<VisitAction> Actions { get; init; } = [];
}
