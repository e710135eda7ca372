namespace LogBook.Domain.Simulation;

/// <summary>Kind of a simulated event.</summary>
public enum PlantEventKind
{
    /// <summary>The bleed valve opened.</summary>
    BleedOpened,

    /// <summary>The bleed valve shut.</summary>
    BleedShut,

    /// <summary>A dose of the plan came due.</summary>
    DoseDue,

    /// <summary>Bleeding before a dose began.</summary>
    BleedDownStarted,

    /// <summary>The pump of a dose began.</summary>
    DoseStarted,

    /// <summary>The pump of a dose ended; the bleed stays shut for the hold.</summary>
    DoseEnded,

    /// <summary>The hold ended.</summary>
    HoldEnded,

    /// <summary>A drum ran down to its unusable rest.</summary>
    DrumEmpty,

    /// <summary>The display passed the high alarm.</summary>
    HighAlarm,

    /// <summary>The display fell below the low alarm while water circulated.</summary>
    LowAlarm,

    /// <summary>The bleed stayed open longer than allowed.</summary>
    LongBleed,

    /// <summary>A feed ran longer than allowed.</summary>
    LongFeed,

    /// <summary>Circulation stopped.</summary>
    FlowLost,

    /// <summary>Circulation began.</summary>
    FlowBack,
}
