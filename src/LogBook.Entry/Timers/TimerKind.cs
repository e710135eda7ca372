namespace LogBook.Entry.Timers;

/// <summary>What runs.</summary>
public enum TimerKind
{
    /// <summary>A hand meter in the water.</summary>
    Settling,

    /// <summary>A slide or bottle that waits for its result.</summary>
    Incubation,
}
