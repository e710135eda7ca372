using LogBook.Domain.Assessments;
using LogBook.Domain.History;
using LogBook.Domain.Intervals;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>
/// What one visit and those before it let us work out. Looks backwards only: a later visit never changes it, so a replay keeps
/// it. Visits are linked by <see cref="Previous"/>.
/// </summary>
public sealed class VisitFacts
{
    /// <summary>Works out the facts of a visit.</summary>
    /// <param name="history">Set-up, site and programmes of the system; its visits are not looked at.</param>
    /// <param name="visit">The visit as known.</param>
    /// <param name="previous">Facts of the visit before it, or null for the first.</param>
    public VisitFacts(SystemHistory history, SystemVisit visit, VisitFacts? previous)
    {
        History = history;
        Visit = visit;
        Previous = previous;
        Day = history.DayOf(visit.At);
        Programme = history.ProgrammeOn(Day);
    }

    /// <summary>Set-up, site and programmes; its visits may be later than this one and are not to be read.</summary>
    public SystemHistory History { get; }

    /// <summary>The visit.</summary>
    public SystemVisit Visit { get; }

    /// <summary>The visit before, or null.</summary>
    public VisitFacts? Previous { get; }

    /// <summary>Day of the visit in the site's zone.</summary>
    public DateOnly Day { get; }

    /// <summary>Programme in force on the day, or null.</summary>
    public Programme? Programme { get; }

    /// <summary>Figures of the visit and of the interval that ends with it.</summary>
    public IReadOnlyList<Figure> Figures { get; } = [];

    /// <summary>What was found and done.</summary>
    internal VisitedSystem Record => Visit.Record;

    /// <summary>Hours an output ran since its last reading.</summary>
    /// <param name="output">Code of the output.</param>
    /// <returns>Hours, or why they are not known.</returns>
    public Computed<Estimate> HoursRun(string output)
    {
        if (HoursReading(output) is not { } now)
        {
            return Computed<Estimate>.None(IntervalReasons.NotRead);
        }

        foreach (var earlier in Back().Skip(1))
        {
            if (earlier.HoursReading(output) is { } then)
            {
                return HoursBetween.Of(then, now, (Visit.At - earlier.Visit.At).TotalHours);
            }
        }

        return Computed<Estimate>.None(IntervalReasons.NoEarlierReading);
    }

    private HoursReading? HoursReading(string output) =>
        Record.HoursRun.FirstOrDefault(reading => reading.Output.Equals(output, StringComparison.OrdinalIgnoreCase));

    /// <summary>This visit and those before it, latest first.</summary>
    /// <returns>The visits.</returns>
    public IEnumerable<VisitFacts> Back()
    {
        for (var visit = this; visit is not null; visit = visit.Previous)
        {
            yield return visit;
        }
    }
}
