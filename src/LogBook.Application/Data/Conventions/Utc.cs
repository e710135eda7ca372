namespace LogBook.Application.Data.Conventions;

/// <summary>Moments as they are stored: UTC, truncated to the millisecond.</summary>
public static class Utc
{
    /// <summary>The stored form of a moment.</summary>
    /// <exception cref="ArgumentException">Local time, which is never what was meant.</exception>
    public static DateTime Of(DateTime time) => time.Kind == DateTimeKind.Local
        ? throw new ArgumentException("A local time cannot be stored.", nameof(time))
        : new DateTime(time.Ticks - (time.Ticks % TimeSpan.TicksPerMillisecond), DateTimeKind.Utc);

    /// <summary>Now, in the stored form.</summary>
    public static DateTime Now(TimeProvider clock) => Of(clock.GetUtcNow().UtcDateTime);
}
