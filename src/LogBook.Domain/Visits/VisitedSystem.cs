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
    public IReadOnlyList<Reading> Readings { get; init => field = value ?? []; } = [];

    /// <summary>Probe checks.</summary>
    public IReadOnlyList<ProbeReading> Probes { get; init => field = value ?? []; } = [];

    /// <summary>Water meters.</summary>
    public IReadOnlyList<MeterReading> Meters { get; init => field = value ?? []; } = [];

    /// <summary>Drums.</summary>
    public IReadOnlyList<DrumReading> Drums { get; init => field = value ?? []; } = [];

    /// <summary>Hours run, by output.</summary>
    public IReadOnlyList<HoursReading> HoursRun { get; init => field = value ?? []; } = [];

    /// <summary>Stroke and speed.</summary>
    public IReadOnlyList<PumpReading> Pumps { get; init => field = value ?? []; } = [];

    /// <summary>Pump outputs measured.</summary>
    public IReadOnlyList<Drawdown> Drawdowns { get; init => field = value ?? []; } = [];

    /// <summary>Bleed timed into a bucket.</summary>
    public BleedTest? BleedTest { get; init; }

    /// <summary>Switches.</summary>
    public IReadOnlyList<SwitchReading> Switches { get; init => field = value ?? []; } = [];

    /// <summary>Settings.</summary>
    public IReadOnlyList<SettingReading> Settings { get; init => field = value ?? []; } = [];

    /// <summary>Current output.</summary>
    public MaReading? MaOutput { get; init; }

    /// <summary>Product added by hand.</summary>
    public IReadOnlyList<Addition> Additions { get; init => field = value ?? []; } = [];

    /// <summary>What happened.</summary>
    public IReadOnlyList<VisitEvent> Events { get; init => field = value ?? []; } = [];

    /// <summary>Alarms.</summary>
    public IReadOnlyList<AlarmReading> Alarms { get; init => field = value ?? []; } = [];

    /// <summary>What was seen.</summary>
    public IReadOnlyList<Observation> Observations { get; init => field = value ?? []; } = [];

    /// <summary>What is to be done.</summary>
    public IReadOnlyList<VisitAction> Actions { get; init => field = value ?? []; } = [];
}
