namespace LogBook.Entry.Timers;

/// <summary>A time that runs at the tower or in the incubator.</summary>
/// <param name="Key">Key of the field that says when it began.</param>
/// <param name="Name">What it is about, in the language of the form.</param>
/// <param name="Kind">Settling or incubation.</param>
/// <param name="Start">When it began, UTC.</param>
/// <param name="Takes">How long it takes; null when nobody said.</param>
public sealed record RunningTimer(string Key, string Name, TimerKind Kind, DateTime Start, TimeSpan? Takes)
{
    /// <summary>Time since it began; none when the clock was set back behind that.</summary>
    /// <param name="now">Now, UTC.</param>
    /// <returns>The time.</returns>
    public TimeSpan Passed(DateTime now) => now > Start ? now - Start : TimeSpan.Zero;

    /// <summary>Whether it is over; false as long as nobody said how long it takes.</summary>
    /// <param name="now">Now, UTC.</param>
    /// <returns>True from the moment on at which it is over.</returns>
    public bool IsOver(DateTime now) => Takes is { } takes && Passed(now) >= takes;
}
