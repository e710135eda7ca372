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
    private readonly ConcurrentDictionary<(Programme, Feed), DoseCalendar> _calendars = new(SamePlan.Instance);

    /// <summary>Starts of one feed in a stretch of time.</summary>
    /// <param name="programme">Programme in force.</param>
    /// <param name="feed">A feed by dose plan.</param>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>Starts, UTC, in order.</returns>
    public ReadOnlySpan<DateTime> Starts(Programme programme, Feed feed, DateTime fromUtc, DateTime toUtc) =>
        Of(programme, feed).Starts(fromUtc, toUtc);

    /// <summary>The same starts as the clock on the wall shows them.</summary>
    /// <param name="programme">Programme in force.</param>
    /// <param name="feed">A feed by dose plan.</param>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>Local times, in the order of the starts.</returns>
    public ReadOnlySpan<DateTime> Walls(Programme programme, Feed feed, DateTime fromUtc, DateTime toUtc) => Of(programme, feed).Walls(fromUtc, toUtc);

    private DoseCalendar Of(Programme programme, Feed feed) =>
        _calendars.GetOrAdd((programme, feed), static (key, zone) => new DoseCalendar(key.Item1, key.Item2, zone), zone);

    // Programmes never change, so one is told by its object. A feed as found or left at a visit is another object each time, but nearly
    // always the same plan: its starts depend on weeks, days and times alone.
    private sealed class SamePlan : IEqualityComparer<(Programme, Feed)>
    {
        public static readonly SamePlan Instance = new();

        public bool Equals((Programme, Feed) x, (Programme, Feed) y) => ReferenceEquals(x.Item1, y.Item1)
            && (ReferenceEquals(x.Item2, y.Item2) || (AreEqual(x.Item2.Weeks, y.Item2.Weeks) && AreEqual(x.Item2.Days, y.Item2.Days) && AreEqual(x.Item2.Starts, y.Item2.Starts)));

        public int GetHashCode((Programme, Feed) obj)
        {
            var hash = System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(obj.Item1);
            var (weeks, days) = (obj.Item2.Weeks, obj.Item2.Days);
            for (var i = 0; i < weeks.Count; i++)
            {
                hash = (hash * 31) + weeks[i];
            }

            for (var i = 0; i < days.Count; i++)
            {
                hash = (hash * 31) + (int)days[i];
            }

            return hash;
        }

        private static bool AreEqual<T>(IReadOnlyList<T> a, IReadOnlyList<T> b)
            where T : notnull
        {
            if (a.Count != b.Count)
            {
                return false;
            }

            for (var i = 0; i < a.Count; i++)
            {
                if (!EqualityComparer<T>.Default.Equals(a[i], b[i]))
                {
                    return false;
                }
            }

            return true;
        }
    }
}
