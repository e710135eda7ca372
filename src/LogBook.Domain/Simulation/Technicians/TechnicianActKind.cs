using System.Text.Json.Serialization;

namespace LogBook.Domain.Simulation.Technicians;

/// <summary>What a technician does on a visit beyond the usual round of readings.</summary>
[JsonConverter(typeof(JsonStringEnumConverter<TechnicianActKind>))]
public enum TechnicianActKind
{
    /// <summary>Neither cleans nor calibrates the conductivity probe, whatever it reads.</summary>
    [JsonStringEnumMemberName("leave-probe")]
    LeaveProbe,

    /// <summary>Calibrates the conductivity probe to the hand meter without cleaning it.</summary>
    [JsonStringEnumMemberName("calibrate-dirty")]
    CalibrateDirty,

    /// <summary>Cleans the conductivity probe, and calibrates it when it is still off.</summary>
    [JsonStringEnumMemberName("clean-probe")]
    CleanProbe,

    /// <summary>Leaves an output (the part) forced on by mistake and does not write its switch down.</summary>
    [JsonStringEnumMemberName("leave-forced-on")]
    LeaveForcedOn,

    /// <summary>Puts in a new make-up meter (the part); the value is its first count.</summary>
    [JsonStringEnumMemberName("renew-meter")]
    RenewMeter,

    /// <summary>Puts in a new pump head on an output (the part).</summary>
    [JsonStringEnumMemberName("renew-pump")]
    RenewPump,

    /// <summary>Has a leak or overflow stopped.</summary>
    [JsonStringEnumMemberName("stop-leak")]
    StopLeak,

    /// <summary>Cleans the ORP probe.</summary>
    [JsonStringEnumMemberName("clean-orp")]
    CleanOrp,

    /// <summary>Exchanges a drum (the part) for one of the product in the text with the litres in the value; the label is not scanned.</summary>
    [JsonStringEnumMemberName("swap-drum")]
    SwapDrum,

    /// <summary>Reads the label of a drum (the part) and puts the right product there.</summary>
    [JsonStringEnumMemberName("correct-drum")]
    CorrectDrum,

    /// <summary>One honest outlier: the result of a test (the part) times the value.</summary>
    [JsonStringEnumMemberName("outlier")]
    Outlier,

    /// <summary>Writes down an observation about a part.</summary>
    [JsonStringEnumMemberName("observe")]
    Observe,

    /// <summary>Cleans and disinfects: water out, new water in, first charge of inhibitor by hand.</summary>
    [JsonStringEnumMemberName("clean-system")]
    CleanSystem,

    /// <summary>Does not come: the visit falls out.</summary>
    [JsonStringEnumMemberName("miss")]
    Miss,

    /// <summary>Comes so many days (the value) later than planned, or earlier when negative.</summary>
    [JsonStringEnumMemberName("shift")]
    Shift,

    /// <summary>Takes no laboratory sample, due or not.</summary>
    [JsonStringEnumMemberName("no-lab")]
    NoLab,

    /// <summary>Takes a Legionella sample, due or not.</summary>
    [JsonStringEnumMemberName("sample-legionella")]
    SampleLegionella,

    /// <summary>Writes down that site staff started the plant so many days (the value) before.</summary>
    [JsonStringEnumMemberName("started")]
    Started,

    /// <summary>Another technician (the text) comes instead.</summary>
    [JsonStringEnumMemberName("stand-in")]
    StandIn,

    /// <summary>Is short of time on this visit.</summary>
    [JsonStringEnumMemberName("hurry")]
    Hurry,

    /// <summary>Does not look at the plant and makes the visit up; the value is what he adds to the meter each time.</summary>
    [JsonStringEnumMemberName("invent")]
    Invent,

    /// <summary>Fills nothing into a drum (the part), however low it stands.</summary>
    [JsonStringEnumMemberName("leave-drum")]
    LeaveDrum,

    /// <summary>Has the bleed valve renewed.</summary>
    [JsonStringEnumMemberName("renew-valve")]
    RenewValve,
}
