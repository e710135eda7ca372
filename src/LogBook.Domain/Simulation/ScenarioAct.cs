using System.Text.Json.Serialization;

namespace LogBook.Domain.Simulation;

/// <summary>What a scenario entry does.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<ScenarioAct>))]
public enum ScenarioAct
{
    /// <summary>Conductivity probe loses (negative) or gains so many % of its reading a week until cleaned.</summary>
    [JsonStringEnumMemberName("probe-fouling")]
    ProbeFouling,

    /// <summary>ORP probe reads so many mV too high.</summary>
    [JsonStringEnumMemberName("orp-coating")]
    OrpCoating,

    /// <summary>Switch of an output to forced-on.</summary>
    [JsonStringEnumMemberName("force-on")]
    ForceOn,

    /// <summary>Switch of an output to forced-off.</summary>
    [JsonStringEnumMemberName("force-off")]
    ForceOff,

    /// <summary>Switch of an output to automatic.</summary>
    [JsonStringEnumMemberName("automatic")]
    Automatic,

    /// <summary>Share of the pulses that reach the controller: 0 none, 1 all.</summary>
    [JsonStringEnumMemberName("pulses")]
    Pulses,

    /// <summary>The meter's dial sticks (value 0) or counts again (1).</summary>
    [JsonStringEnumMemberName("dial")]
    Dial,

    /// <summary>Leak or overflow, L/h.</summary>
    [JsonStringEnumMemberName("leak")]
    Leak,

    /// <summary>The controller falls back to other settings.</summary>
    [JsonStringEnumMemberName("settings-reset")]
    SettingsReset,

    /// <summary>Pump of an output delivers this share of its rating.</summary>
    [JsonStringEnumMemberName("pump-output")]
    PumpOutput,

    /// <summary>Make-up calcium, mg/L as CaCO3.</summary>
    [JsonStringEnumMemberName("make-up-calcium")]
    MakeUpCalcium,

    /// <summary>Make-up alkalinity, mg/L as CaCO3.</summary>
    [JsonStringEnumMemberName("make-up-alkalinity")]
    MakeUpAlkalinity,

    /// <summary>A drum holds another product.</summary>
    [JsonStringEnumMemberName("drum-holds")]
    DrumHolds,

    /// <summary>Controller clock is ahead by so many minutes.</summary>
    [JsonStringEnumMemberName("clock-off")]
    ClockOff,

    /// <summary>Controller counts so many weeks too many.</summary>
    [JsonStringEnumMemberName("week-off")]
    WeekOff,

    /// <summary>The flow switch is bridged (value 1): outputs run without flow.</summary>
    [JsonStringEnumMemberName("flow-bridged")]
    FlowBridged,

    /// <summary>The open bleed valve lets this share of its flow through; 0 means blocked.</summary>
    [JsonStringEnumMemberName("bleed-valve")]
    BleedValve,

    /// <summary>The shut bleed valve lets so many L/h through.</summary>
    [JsonStringEnumMemberName("bleed-passes")]
    BleedPasses,

    /// <summary>Product poured in by site staff, L; the text names it.</summary>
    [JsonStringEnumMemberName("poured")]
    Poured,

    /// <summary>Display of the conductivity probe over what it was: an error that cleaning does not take away.</summary>
    [JsonStringEnumMemberName("probe-offset")]
    ProbeOffset,

    /// <summary>Strength of the make-up over its usual one: conductivity and every ion.</summary>
    [JsonStringEnumMemberName("make-up-strength")]
    MakeUpStrength,

    /// <summary>Calcium above which deposit forms, mg/L as CaCO3.</summary>
    [JsonStringEnumMemberName("deposit-above")]
    DepositAbove,
}
