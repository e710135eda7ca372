namespace LogBook.Capture.Visits;

/// <summary>The device's clock, set right by the server's: a tablet that is a day off must not date a visit wrongly.</summary>
/// <param name="ahead">By how much the server's clock is ahead.</param>
internal sealed class DeviceClock(TimeSpan ahead) : TimeProvider
{
    /// <inheritdoc />
    public override DateTimeOffset GetUtcNow() => System.GetUtcNow() + ahead;
}
