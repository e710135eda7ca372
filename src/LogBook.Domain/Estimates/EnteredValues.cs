using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>The plain results of one visit, each in the first unit of its test, by system, test, point and source.</summary>
/// <remarks>A value entered twice (found, and again) is there with the last of both, as at entry.</remarks>
internal sealed class EnteredValues
{
    private readonly Dictionary<VisitContext.SeriesKey, double> _values = new(VisitContext.SeriesKey.Comparer);
    private readonly List<(Reading Reading, VisitContext.SeriesKey Key, double Value)> _all = [];

    private EnteredValues(VisitFacts visit)
    {
        foreach (var reading in visit.Record.Readings)
        {
            if (VisitContext.ValueOf(reading, visit.History.Firm) is { } value)
            {
                var key = VisitContext.SeriesKey.Of(visit.Record.System, reading);
                _values[key] = value;
                _all.Add((reading, key, value));
            }
        }
    }

    /// <summary>Results with a number that is neither censored nor in another basis.</summary>
    public IReadOnlyList<(Reading Reading, VisitContext.SeriesKey Key, double Value)> All => _all;

    /// <summary>Works them out.</summary>
    /// <param name="visit">The visit.</param>
    public static EnteredValues Of(VisitFacts visit) => new(visit);

    /// <summary>The last values of a series before a visit, latest first.</summary>
    /// <param name="visit">The visit, not counted.</param>
    /// <param name="key">The series.</param>
    /// <param name="count">How many at most.</param>
    /// <param name="visits">Visits to look back at most.</param>
    public static List<double> Before(VisitFacts visit, VisitContext.SeriesKey key, int count, int visits)
    {
        var last = new List<double>(count);
        for (var earlier = visit.Previous; earlier is not null && last.Count < count && visits-- > 0; earlier = earlier.Previous)
        {
            if (earlier.Entered._values.TryGetValue(key, out var value))
            {
                last.Add(value);
            }
        }

        return last;
    }
}
