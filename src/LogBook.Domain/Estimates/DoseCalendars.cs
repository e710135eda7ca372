using System.Collections.Concurrent;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>
/// Calendar doses of one system: every visit asks for the starts of stretches that overlap, so each day is worked out once. Says the same
/// as <see cref="PlannedDoses.Starts"/>. May be used by several threads at once.
/// </summary>
/// <param name="zone">The site's zone.</param>
internal sealed class DoseCalendars(TimeZoneInfo zone)
{
    private readonly ConcurrentDictionary<(Programme, Feed), DoseCalendar> _calendars = new(SameObjects.Instance);

    /// <summary>Starts of one feed in a stretch of time.</summary>
    /// <param name="programme">Programme in force.</param>
    /// <param name="feed">A feed by dose plan.</param>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>Starts, UTC, in order.</returns>
    public ReadOnlySpan<DateTime> Starts(Programme programme, Feed feed, DateTime fromUtc, DateTime toUtc) =>
        _calendars.GetOrAdd((programme, feed), static (key, zone) => new DoseCalendar(key.Item1, key.Item2, zone), zone).Starts(fromUtc, toUtc);

    // Programmes and feeds never change: the same objects mean the same plan, and comparing their contents would cost more than it saves.
    private sealed class SameObjects : IEqualityComparer<(Programme, Feed)>
    {
        public static readonly SameObjects Instance = new();

        public bool Equals((Programme, Feed) x, (Programme, Feed) y) => ReferenceEquals(x.Item1, y.Item1) && ReferenceEquals(x.Item2, y.Item2);

        public int GetHashCode((Programme, Feed) obj) => System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj.Item2);
    }
}
