using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>The plain results of one visit, each in the first unit of its test.</summary>
/// <remarks>A value entered twice (found, and again) is there with the last of both, as at entry.</remarks>
internal sealed class EnteredValues
{
    private readonly List<(Reading Reading, double Value)> _all = [];

    private EnteredValues(VisitFacts visit)
    {
        foreach (var reading in visit.Record.Readings)
        {
            if (VisitContext.ValueOf(reading, visit.History.Firm) is { } value)
            {
                _all.Add((reading, value));
            }
        }
    }

    /// <summary>Results with a number that is neither censored nor in another basis.</summary>
    public IReadOnlyList<(Reading Reading, double Value)> All => _all;

    /// <summary>Works them out.</summary>
    /// <param name="visit">The visit.</param>
    public static EnteredValues Of(VisitFacts visit) => new(visit);

    /// <summary>The last values of a series before a visit, latest first.</summary>
    /// <param name="visit">The visit, not counted.</param>
    /// <param name="reading">A reading of the series: the same test, point and source.</param>
    /// <param name="last">Takes them, as many as it holds at most.</param>
    /// <param name="visits">Visits to look back at most.</param>
    /// <returns>How many there are.</returns>
    public static int Before(VisitFacts visit, Reading reading, Span<double> last, int visits)
    {
        var count = 0;
        for (var earlier = visit.Previous; earlier is not null && count < last.Length && visits-- > 0; earlier = earlier.Previous)
        {
            if (earlier.Entered.LastOf(reading) is { } value)
            {
                last[count++] = value;
            }
        }

        return count;
    }

    // Of the same test, point and source; case does not count in codes.
    private double? LastOf(Reading reading)
    {
        for (var i = _all.Count - 1; i >= 0; i--)
        {
            var other = _all[i].Reading;
            if (other.Source == reading.Source
                && other.Test.Equals(reading.Test, StringComparison.OrdinalIgnoreCase)
                && other.At.Equals(reading.At, StringComparison.OrdinalIgnoreCase))
            {
                return _all[i].Value;
            }
        }

        return null;
    }
}
