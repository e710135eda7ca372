using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>Starts of one calendar dose, kept for the days that were asked for so far.</summary>
internal sealed class DoseCalendar(Programme programme, Feed feed, TimeZoneInfo zone)
{
    // Visits are weeks apart: room for the next few ones.
    private const int DaysAhead = 60;

    private volatile Kept? _kept;

    /// <summary>Starts in a stretch of time.</summary>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>Starts, UTC, in order.</returns>
    public ReadOnlySpan<DateTime> Starts(DateTime fromUtc, DateTime toUtc)
    {
        var kept = KeptFor(fromUtc, toUtc);
        return kept.Starts.AsSpan(Between(kept, fromUtc, toUtc));
    }

    /// <summary>The same starts as the clock on the wall shows them.</summary>
    /// <param name="fromUtc">Start of the stretch, included.</param>
    /// <param name="toUtc">End of the stretch, excluded.</param>
    /// <returns>Local times, in the order of the starts.</returns>
    public ReadOnlySpan<DateTime> Walls(DateTime fromUtc, DateTime toUtc)
    {
        var kept = KeptFor(fromUtc, toUtc);
        return kept.WallsIn(zone).AsSpan(Between(kept, fromUtc, toUtc));
    }

    private Kept KeptFor(DateTime fromUtc, DateTime toUtc)
    {
        var kept = _kept;
        if (kept is null || fromUtc < kept.From || toUtc > kept.To)
        {
            _kept = kept = kept is null ? new Kept(fromUtc, toUtc, [.. Of(fromUtc, toUtc)]) : Wider(kept, fromUtc, toUtc);
        }

        return kept;
    }

    private static Range Between(Kept kept, DateTime fromUtc, DateTime toUtc)
    {
        var (first, end) = (FirstFrom(kept.Starts, fromUtc), FirstFrom(kept.Starts, toUtc));
        return first < end ? first..end : 0..0;
    }

    private Kept Wider(Kept kept, DateTime fromUtc, DateTime toUtc)
    {
        var (from, to) = (fromUtc < kept.From ? fromUtc : kept.From, toUtc > kept.To ? toUtc.AddDays(DaysAhead) : kept.To);
        return new Kept(from, to, [.. from < kept.From ? Of(from, kept.From) : [], .. kept.Starts, .. to > kept.To ? Of(kept.To, to) : []]);
    }

    private IReadOnlyList<DateTime> Of(DateTime fromUtc, DateTime toUtc) => PlannedDoses.Starts(programme, feed, zone, fromUtc, toUtc);

    private static int FirstFrom(DateTime[] starts, DateTime moment)
    {
        var (low, high) = (0, starts.Length);
        while (low < high)
        {
            var middle = (low + high) / 2;
            (low, high) = starts[middle] < moment ? (middle + 1, high) : (low, middle);
        }

        return low;
    }

    private sealed record Kept(DateTime From, DateTime To, DateTime[] Starts)
    {
        private DateTime[]? _walls;

        public DateTime[] WallsIn(TimeZoneInfo zone) => _walls ??= Array.ConvertAll(Starts, start => TimeZoneInfo.ConvertTimeFromUtc(start, zone));
    }
}
