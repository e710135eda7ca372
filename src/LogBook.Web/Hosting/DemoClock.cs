namespace LogBook.Web.Hosting;

/// <summary>
/// The clock of the demo: it starts just after the invented firm's last visit, so that nothing in it is years overdue,
/// and then goes at the pace of the real one.
/// </summary>
public sealed class DemoClock(TimeProvider real) : TimeProvider
{
    private TimeSpan _shift;

    /// <summary>Makes this moment now.</summary>
    public void Start(DateTime utc) => _shift = utc - real.GetUtcNow().UtcDateTime;

    /// <inheritdoc />
    public override DateTimeOffset GetUtcNow() => real.GetUtcNow() + _shift;

    /// <inheritdoc />
    public override long TimestampFrequency => real.TimestampFrequency;

    /// <inheritdoc />
    public override long GetTimestamp() => real.GetTimestamp();

    /// <inheritdoc />
    public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) =>
        real.CreateTimer(callback, state, dueTime, period);
}
