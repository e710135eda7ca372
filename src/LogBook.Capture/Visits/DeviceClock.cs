namespace LogBook.Capture.Visits;

/// <summary>The device's clock, set right by the server's: a tablet that is a day off must not date a visit wrongly.</summary>
/// <remarks>
/// A clock that is set back while a form is open is not followed: the time since the form was opened counts then. A clock that jumps on
/// is followed, because a tablet that slept looks the same.
/// </remarks>
internal sealed class DeviceClock : TimeProvider
{
    private static readonly TimeSpan Slack = TimeSpan.FromMinutes(1);
    private readonly TimeSpan _ahead;
    private readonly TimeProvider _device;
    private readonly DateTimeOffset _began;
    private readonly long _beganAt;

    /// <summary>Begins now.</summary>
    /// <param name="ahead">By how much the server's clock is ahead.</param>
    /// <param name="device">Clock of the device.</param>
    public DeviceClock(TimeSpan ahead, TimeProvider device)
    {
        _ahead = ahead;
        _device = device;
        _began = device.GetUtcNow() + ahead;
        _beganAt = device.GetTimestamp();
    }

    /// <inheritdoc />
    public override DateTimeOffset GetUtcNow()
    {
        var told = _device.GetUtcNow() + _ahead;
        var passed = _began + _device.GetElapsedTime(_beganAt);
        return told < passed - Slack ? passed : told;
    }
}
