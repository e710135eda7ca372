using LogBook.Domain.Clocks;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>A plant that stood and runs again.</summary>
/// <param name="StoppedUtc">From when on it stood, as far as the records show.</param>
/// <param name="RestartedUtc">From when on it ran again, as far as the records show.</param>
public sealed record Restart(DateTime StoppedUtc, DateTime RestartedUtc)
{
    // A restart further back has had its samples or its disinfection, or nobody will find them any more.
    private const int ReachDays = 60;
    private const int LongestStopDays = 400;

    /// <summary>Length of the stop, d.</summary>
    public double Days => (RestartedUtc - StoppedUtc).TotalDays;

    /// <summary>The latest restart before a visit, within two months.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>By events and by how the plant was found, else by its stops and seasons on file; null where there was none or the plant stands.</returns>
    public static Restart? Before(VisitFacts visit)
    {
        if (Stands(visit))
        {
            return null;
        }

        return ByRecord(visit) ?? ByPattern(visit);
    }

    private static bool Stands(VisitFacts visit) => visit.Record.Running == false || visit.Record.InUse == false;

    private static Restart? ByRecord(VisitFacts visit)
    {
        VisitFacts? firstRunning = null;
        for (var earlier = visit; earlier is not null && (visit.Visit.At - earlier.Visit.At).TotalDays <= ReachDays + LongestStopDays; earlier = earlier.Previous)
        {
            if (Stands(earlier))
            {
                return firstRunning is { } ran && (visit.Visit.At - ran.Visit.At).TotalDays <= ReachDays
                    ? new Restart(StoppedBefore(earlier), StartedAt(ran) ?? ran.Visit.At)
                    : null;
            }

            if (earlier.Record.Events.Count > 0 && earlier.Record.Events.Any(e => e.Type == EventType.Started) && StartedAt(earlier) is { } started)
            {
                var stopped = StoppedBetween(earlier, started);
                return stopped is { } since && (visit.Visit.At - started).TotalDays <= ReachDays ? new Restart(since, started) : null;
            }

            firstRunning = earlier;
        }

        return null;
    }

    private static DateTime? StartedAt(VisitFacts visit) => visit.Record.Events.Where(e => e.Type == EventType.Started).Select(e => (DateTime?)(e.At ?? visit.Visit.Visit.Arrived).Utc).Max();

    // The first of the visits in a row that found it standing, or the stop recorded at or before it.
    private static DateTime StoppedBefore(VisitFacts standing)
    {
        var first = standing;
        foreach (var earlier in standing.Back().Skip(1))
        {
            if (!Stands(earlier))
            {
                break;
            }

            first = earlier;
        }

        return StopEvent(first) ?? (first.Previous is { } previous ? StopEvent(previous) : null) ?? first.Visit.At;
    }

    // With a start but no visit to the standing plant: the stop recorded last, else the days on which the pattern says that it stood.
    private static DateTime? StoppedBetween(VisitFacts visit, DateTime started)
    {
        foreach (var earlier in visit.Back().TakeWhile(v => (started - v.Visit.At).TotalDays <= LongestStopDays))
        {
            if (StopEvent(earlier) is { } stopped && stopped < started)
            {
                return stopped;
            }

            if (Stands(earlier))
            {
                return StoppedBefore(earlier);
            }

            if (earlier != visit && earlier.Record.Events.Any(e => e.Type == EventType.Started))
            {
                break;
            }
        }

        return PatternStop(visit, visit.History.DayOf(started))?.StoppedUtc;
    }

    private static DateTime? StopEvent(VisitFacts visit) => visit.Record.Events.Where(e => e.Type == EventType.Stopped).Select(e => (DateTime?)(e.At ?? visit.Visit.Visit.Arrived).Utc).Max();

    // A visit that found the plant running in a stop on file refutes it; where the records begin later, what was done then is not in them.
    private static Restart? ByPattern(VisitFacts visit)
    {
        for (var back = 0; back <= ReachDays; back++)
        {
            if (!OperatingDays.Runs(visit.History.System.Operation, visit.Day.AddDays(-back)))
            {
                return back == 0 ? null : PatternStop(visit, visit.Day.AddDays(1 - back)) is { } stop
                    && visit.Back().Skip(1).Any(v => v.Visit.At < stop.RestartedUtc)
                    && !visit.Back().Skip(1).TakeWhile(v => v.Visit.At >= stop.StoppedUtc).Any(v => v.Visit.At < stop.RestartedUtc && v.Record.Running != false)
                        ? stop
                        : null;
            }
        }

        return null;
    }

    private static Restart? PatternStop(VisitFacts visit, DateOnly restarted)
    {
        var operation = visit.History.System.Operation;
        var day = restarted;
        while (restarted.DayNumber - day.DayNumber < LongestStopDays && !OperatingDays.Runs(operation, day.AddDays(-1)))
        {
            day = day.AddDays(-1);
        }

        return day == restarted ? null : new Restart(Midnight(visit, day), Midnight(visit, restarted));
    }

    private static DateTime Midnight(VisitFacts visit, DateOnly day)
    {
        var wall = day.ToDateTime(TimeOnly.MinValue);
        return TimeZoneInfo.ConvertTimeToUtc(visit.History.Zone.IsInvalidTime(wall) ? wall.AddHours(1) : wall, visit.History.Zone);
    }
}
