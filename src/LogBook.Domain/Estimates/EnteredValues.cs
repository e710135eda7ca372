using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>The plain results of one visit, each in the first unit of its test.</summary>
/// <remarks>A value entered twice (found, and again) is there with the last of both, as at entry.</remarks>
internal sealed class EnteredValues
{
    private readonly List<(Reading Reading, double Value)> _all;

    // Series of each value, as the history numbers them: a look back over many visits then compares numbers, not three codes.
    private readonly List<int> _series;

    private EnteredValues(VisitFacts visit, EnteredValues? before)
    {
        var readings = visit.Record.Readings;
        (_all, _series) = (new(readings.Count), new(readings.Count));
        var next = 0;
        for (var i = 0; i < readings.Count; i++)
        {
            var reading = readings[i];
            if (before is not null && next < before._all.Count && ReferenceEquals(before._all[next].Reading, reading))
            {
                _all.Add(before._all[next]);
                _series.Add(before._series[next++]);
            }
            else if (VisitContext.ValueOf(reading, visit.History.Firm) is { } value)
            {
                _all.Add((reading, value));
                _series.Add(visit.History.SeriesOf(reading));
            }
        }
    }

    /// <summary>Results with a number that is neither censored nor in another basis.</summary>
    public IReadOnlyList<(Reading Reading, double Value)> All => _all;

    /// <summary>Works them out.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="before">Those of the visit as it was known before, or null: a reading that is still the same object keeps its own.</param>
    public static EnteredValues Of(VisitFacts visit, EnteredValues? before) => new(visit, before);

    /// <summary>The last values of a series before a visit, latest first.</summary>
    /// <param name="visit">The visit, not counted.</param>
    /// <param name="reading">A reading of the series: the same test, point and source.</param>
    /// <param name="last">Takes them, as many as it holds at most.</param>
    /// <param name="visits">Visits to look back at most.</param>
    /// <returns>How many there are.</returns>
    public static int Before(VisitFacts visit, Reading reading, Span<double> last, int visits)
    {
        var (count, series) = (0, visit.History.SeriesOf(reading));
        for (var earlier = visit.Previous; earlier is not null && count < last.Length && visits-- > 0; earlier = earlier.Previous)
        {
            if (earlier.Entered.LastOf(series) is { } value)
            {
                last[count++] = value;
            }
        }

        return count;
    }

    private double? LastOf(int series)
    {
        var last = _series.LastIndexOf(series);
        return last >= 0 ? _all[last].Value : null;
    }
}
