namespace LogBook.Domain.Clocks;

/// <summary>The clock of a finding's own.</summary>
/// <param name="Kind">What set it running; null for a drum that runs empty.</param>
/// <param name="Due">End of the time allowed, UTC.</param>
/// <param name="Day">Last day in time, in the site's zone.</param>
public sealed record FindingDeadline(DutyKind? Kind, DateTime Due, DateOnly Day)
{
    /// <summary>Whether its time is over.</summary>
    /// <param name="utc">Moment, UTC.</param>
    public bool IsOver(DateTime utc) => utc >= Due;

    /// <summary>Time left at a moment, below zero when it is over.</summary>
    /// <param name="utc">Moment, UTC.</param>
    public TimeSpan LeftAt(DateTime utc) => Due - utc;

    /// <summary>Whether hours count and not days.</summary>
    public bool CountsHours => Kind is DutyKind.Notify or DutyKind.Summary;
}
