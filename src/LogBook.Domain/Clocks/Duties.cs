using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>The clocks that run for a system on a day, by the rules in force on that day.</summary>
/// <remarks>
/// Intervals of tests and tasks run from the last time they were done, or from the first day on which both the rule and the
/// records were there. An event's duty runs from its newest event. A retest runs from the disinfection that followed the
/// result, else from its receipt. A sample whose result is still to come counts as taken. An authority must be told within hours of
/// receipt, by the version of the rule that was in force on the day of the sample.
/// </remarks>
public static class Duties
{
    private const int LongestLookBack = 60;

    private static readonly string[] Counts = [TestCodes.Legionella, TestCodes.ColonyCount, TestCodes.DipSlide];

    /// <summary>Every clock that runs or ran out.</summary>
    /// <param name="history">Set-up, site and rules; its visits are not looked at.</param>
    /// <param name="newestFirst">Visits as known, newest first.</param>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>One duty for each rule and what sets it running; none where there was no visit.</returns>
    public static IReadOnlyList<Duty> Of(SystemHistory history, IEnumerable<SystemVisit> newestFirst, DateOnly day)
    {
        VisitFacts? latest = null;
        foreach (var visit in newestFirst.Reverse())
        {
            latest = new VisitFacts(history, visit, latest);
        }

        return latest is null ? [] : Of(latest, RulesInForce.Of(history, day));
    }

    internal static IReadOnlyList<Duty> Of(VisitFacts latest, IReadOnlyList<Rule> rules)
    {
        var history = latest.History;
        var duties = new List<Duty>();
        foreach (var rule in rules)
        {
            if (EventNames.TryParse(rule.OnEvent, out var type))
            {
                Add(duties, AfterEvent(history, latest, rule, type));
                continue;
            }

            Add(duties, Interval(history, latest, rule));
            Add(duties, Retest(history, latest, rule));
            Add(duties, Notify(history, latest, rule));
        }

        return duties;
    }

    private static void Add(List<Duty> duties, Duty? duty)
    {
        if (duty is not null)
        {
            duties.Add(duty);
        }
    }

    private static Duty? Interval(SystemHistory history, VisitFacts latest, Rule rule)
    {
        if (rule.EveryDays is not > 0 || (rule.Test is null && rule.Task is null))
        {
            return null;
        }

        var (last, isPending) = rule.Test is { } test ? Sampled(latest, test) : (DoneAt(latest, rule.Task!), false);
        var since = last is { } moment ? history.DayOf(moment) : First(history, latest, rule);
        return new Duty(DutyKind.Interval, rule, since, rule.EveryDays.Value + (rule.GraceDays ?? 0), OperationOf(history, rule))
        {
            LastDone = last,
            IsPending = isPending,
        };
    }

    private static Duty? AfterEvent(SystemHistory history, VisitFacts latest, Rule rule, EventType type)
    {
        if ((rule.WithinDays ?? rule.EveryDays) is not { } within || NewestEvent(latest, type) is not { } happened)
        {
            return null;
        }

        var since = history.DayOf(happened);
        var answered = AnswerTo(history, latest, rule);
        return new Duty(DutyKind.AfterEvent, rule, since, within + (rule.GraceDays ?? 0), OperationOf(history, rule))
        {
            Event = type,
            IsMet = answered is { } moment && history.DayOf(moment) >= since,
            LastDone = answered,
        };
    }

    // What an event asks for: its test or task; where it names neither, the count that the system's rules watch.
    private static DateTime? AnswerTo(SystemHistory history, VisitFacts latest, Rule rule)
    {
        if (rule.Task is { } task)
        {
            return DoneAt(latest, task);
        }

        if (rule.Test is { } test)
        {
            return SampledAt(latest, test);
        }

        return (WatchesLegionella(history) ? Counts.Take(1) : Counts).Select(count => SampledAt(latest, count)).Max();
    }

    internal static bool WatchesLegionella(SystemHistory history) => history.Firm.Rules.Any(other => TestCodes.Legionella.Equals(other.Test, StringComparison.OrdinalIgnoreCase)
        && history.System.Rules.Contains(other.Code, StringComparer.OrdinalIgnoreCase));

    private static Duty? Retest(SystemHistory history, VisitFacts latest, Rule rule)
    {
        if (rule.Test is not { } test || rule.RetestDays.Count == 0 || rule.Bands.Count == 0)
        {
            return null;
        }

        (VisitFacts? visit, Reading? reading, DateTime at) worst = default;
        var at = latest;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            foreach (var reading in at.ReadingsOf(test))
            {
                if ((worst.reading is null || TakenAt(at.Visit, reading) > worst.at) && IsInBand(reading, rule))
                {
                    worst = (at, reading, TakenAt(at.Visit, reading));
                }
            }
        }

        if (worst.reading is not { } result)
        {
            return null;
        }

        var received = (result.ReceivedAt ?? result.ResultAt)?.Utc ?? worst.visit!.Visit.KnownFrom;
        var disinfected = DisinfectedFrom(latest, received);
        var since = history.DayOf(disinfected ?? received);
        var (earliest, last) = (rule.RetestDays[0], rule.RetestDays[^1]);
        var notBefore = since.AddDays((int)earliest);
        var sampledOn = history.DayOf(worst.at);
        var (tooEarlyOn, isMet, retested) = ((DateOnly?)null, false, (DateTime?)null);
        at = latest;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            foreach (var reading in at.ReadingsOf(test))
            {
                if (IsTaken(reading) && history.DayOf(TakenAt(at.Visit, reading)) is var sampled && sampled >= since && sampled > sampledOn)
                {
                    isMet |= sampled >= notBefore;
                    retested = sampled >= notBefore && (retested is null || TakenAt(at.Visit, reading) < retested) ? TakenAt(at.Visit, reading) : retested;
                    tooEarlyOn = sampled < notBefore && (tooEarlyOn is null || sampled > tooEarlyOn) ? sampled : tooEarlyOn;
                }
            }
        }

        return new Duty(DutyKind.Retest, rule, since, last)
        {
            NotBefore = notBefore,
            TooEarlyOn = tooEarlyOn,
            IsMet = isMet,
            LastDone = retested,
            Visit = worst.visit!.Visit.Visit.Id,
        };
    }

    // The newest result that must be told, by the rule as it stood on the day of its sample.
    private static Duty? Notify(SystemHistory history, VisitFacts latest, Rule rule)
    {
        if (rule.Test is not { } test || !history.Firm.Rules.Any(version => IsVersionOf(version, rule) && version.Bands.Any(band => band.NotifyWithinHours is not null)))
        {
            return null;
        }

        (VisitFacts? Visit, Reading? Reading, DateTime Taken, Rule? Rule, double Hours) newest = default;
        var at = latest;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            foreach (var reading in at.ReadingsOf(test))
            {
                var taken = TakenAt(at.Visit, reading);
                if ((newest.Reading is null || taken > newest.Taken)
                    && RulesInForce.Of(history, history.DayOf(taken)).FirstOrDefault(version => IsVersionOf(version, rule)) is { } then
                    && ResultBands.Of(then, reading)?.NotifyWithinHours is { } hours)
                {
                    newest = (at, reading, taken, then, hours);
                }
            }
        }

        if (newest is not { Visit: { } visit, Reading: { } result, Rule: { } inForce })
        {
            return null;
        }

        var received = (result.ReceivedAt ?? result.ResultAt)?.Utc ?? visit.Visit.KnownFrom;
        var told = history.Notifications
            .Where(note => note.Visit == visit.Visit.Visit.Id && note.Test.Equals(test, StringComparison.OrdinalIgnoreCase) && note.Rule.Equals(rule.Code, StringComparison.OrdinalIgnoreCase))
            .Select(note => (DateTime?)note.At).Min();
        var until = received.AddHours(newest.Hours);
        return new Duty(DutyKind.Notify, inForce, history.DayOf(received), newest.Hours / 24)
        {
            Visit = visit.Visit.Visit.Id,
            ReceivedAt = received,
            NotifyBy = until,
            NotifyUntil = history.DayOf(until),
            LastDone = told,
            NotifiedOn = told is { } moment ? history.DayOf(moment) : null,
            IsMet = told is not null,
        };
    }

    private static bool IsVersionOf(Rule version, Rule rule) => version.Code.Equals(rule.Code, StringComparison.OrdinalIgnoreCase);

    internal static bool IsInBand(Reading reading, Rule rule) => IsTaken(reading) && ResultBands.Of(rule, reading) is not null;

    // Results come in late: the newest sample need not stand in the newest visit.
    private static DateTime? SampledAt(VisitFacts latest, string test) => Sampled(latest, test).At;

    private static (DateTime? At, bool IsPending) Sampled(VisitFacts latest, string test)
    {
        DateTime? newest = null;
        var isPending = false;
        var seen = 0;
        var at = latest;
        for (var i = 0; i < LongestLookBack && at is not null && seen < 3; i++, at = at.Previous)
        {
            var (taken, pending) = ((DateTime?)null, false);
            foreach (var reading in at.ReadingsOf(test))
            {
                if (IsTaken(reading) && (taken is null || TakenAt(at.Visit, reading) > taken))
                {
                    (taken, pending) = (TakenAt(at.Visit, reading), reading.NotTaken == SystemVisit.ResultPending);
                }
            }

            seen += taken is null ? 0 : 1;
            if (taken is not null && (newest is null || taken > newest))
            {
                (newest, isPending) = (taken, pending);
            }
        }

        return (newest, isPending);
    }

    private static DateTime? DoneAt(VisitFacts latest, string task)
    {
        for (var at = latest; at is not null; at = at.Previous)
        {
            if (Tasks.DoneAt(task, at.Visit.Visit, at.Record) is { } done)
            {
                return done;
            }
        }

        return null;
    }

    private static DateTime? NewestEvent(VisitFacts latest, EventType type)
    {
        var at = latest;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            DateTime? newest = null;
            foreach (var happened in at.Record.Events)
            {
                if (happened.Type == type && (happened.At ?? at.Visit.Visit.Arrived).Utc is var moment && (newest is null || moment > newest))
                {
                    newest = moment;
                }
            }

            newest ??= type == EventType.Started && at.Visit.Visit.Kind == VisitKind.StartUp ? at.Visit.Visit.Arrived.Utc : null;
            if (newest is not null)
            {
                return newest;
            }
        }

        return null;
    }

    private static DateTime? DisinfectedFrom(VisitFacts latest, DateTime received)
    {
        DateTime? first = null;
        var at = latest;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            foreach (var happened in at.Record.Events)
            {
                if (happened.Type == EventType.Disinfected && (happened.At ?? at.Visit.Visit.Arrived).Utc is var moment && moment >= received && (first is null || moment < first))
                {
                    first = moment;
                }
            }
        }

        return first;
    }

    private static DateOnly First(SystemHistory history, VisitFacts latest, Rule rule)
    {
        var first = latest.First.Day;
        var since = history.Firm.Rules.Where(r => r.Code.Equals(rule.Code, StringComparison.OrdinalIgnoreCase)).Min(r => r.From);
        return since > first ? since : first;
    }

    private static Operation? OperationOf(SystemHistory history, Rule rule) => rule.OperatingDaysOnly == true ? history.System.Operation : null;

    internal static bool IsTaken(Reading reading) => reading.NotTaken is null or SystemVisit.ResultPending;

    internal static DateTime TakenAt(SystemVisit visit, Reading reading) => (reading.TakenAt ?? visit.Visit.Arrived).Utc;
}
