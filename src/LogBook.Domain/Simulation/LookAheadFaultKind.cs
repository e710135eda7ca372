namespace LogBook.Domain.Simulation;

/// <summary>What a look-ahead finds wrong with a programme.</summary>
public enum LookAheadFaultKind
{
    /// <summary>The label does not allow it.</summary>
    Label,

    /// <summary>Two doses meet.</summary>
    Clash,

    /// <summary>A hold passes the high alarm.</summary>
    HoldTooLong,

    /// <summary>A dose stands in water that does not circulate.</summary>
    Untreated,

    /// <summary>A dose waits long or never runs.</summary>
    Waits,

    /// <summary>Longer than a week without any biocide.</summary>
    LongWithout,

    /// <summary>The clocks change.</summary>
    ClockChange,

    /// <summary>The bleed stayed open longer than allowed.</summary>
    LongBleed,
}
