namespace LogBook.Domain.Clocks;

/// <summary>Where a running clock stands at a moment, most urgent first.</summary>
public enum ClockStanding
{
    /// <summary>The time is over and nothing on record meets it.</summary>
    Missed,

    /// <summary>Little time is left.</summary>
    DueSoon,

    /// <summary>Nothing of the kind is on record yet; the time is not over.</summary>
    Unknown,

    /// <summary>It runs, and was met the last time.</summary>
    Running,

    /// <summary>Nothing is left to do.</summary>
    Met,
}
