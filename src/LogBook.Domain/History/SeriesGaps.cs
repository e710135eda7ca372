namespace LogBook.Domain.History;

/// <summary>Where a series of readings has a gap, so that no line is drawn across what was not read.</summary>
public static class SeriesGaps
{
    /// <summary>A gap is longer than this many usual intervals.</summary>
    public const double Factor = 1.6;

    /// <summary>The usual interval: the median of those between neighbours.</summary>
    /// <param name="moments">In order; at least three, otherwise there is no usual interval.</param>
    /// <returns>The median, or null.</returns>
    public static TimeSpan? UsualInterval(IReadOnlyList<DateTime> moments)
    {
        if (moments.Count < 3)
        {
            return null;
        }

        var intervals = moments.Zip(moments.Skip(1), (a, b) => b - a).Where(interval => interval > TimeSpan.Zero).Order().ToList();
        return intervals.Count == 0 ? null : (intervals[(intervals.Count - 1) / 2] + intervals[intervals.Count / 2]) / 2;
    }

    /// <summary>Whether a line between two neighbours would hide missing readings.</summary>
    /// <param name="from">Earlier reading.</param>
    /// <param name="to">Later reading.</param>
    /// <param name="usual">The usual interval; null where none is known, and then nothing is a gap.</param>
    /// <returns>True when the interval is longer than <see cref="Factor"/> times the usual one.</returns>
    public static bool IsGap(DateTime from, DateTime to, TimeSpan? usual) => usual is { } known && to - from > known * Factor;
}
