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
/// records were there; a result in a band can shorten them until a later one lies below it (<see cref="Shortened"/>). An event's duty runs from its newest event. A retest runs from the disinfection that followed the
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

        var (last, isPending) = rule.Test is { } test ? Sampled(latest, test) : (latest.LastDone(rule.Task!), false);
        var since = last is { } moment ? history.DayOf(moment) : First(history, latest, rule);
        var shortened = Shortened.Of(history, latest, rule);
        return new Duty(DutyKind.Interval, rule, since, Shortened.Days(history, rule, since, shortened) + (rule.GraceDays ?? 0), OperationOf(history, rule))
        {
            Band = shortened?.Band,
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
        var answered = AnswerTo(history, latest, rule, since);
        return new Duty(DutyKind.AfterEvent, rule, since, within + (rule.GraceDays ?? 0), OperationOf(history, rule))
        {
            Event = type,
            IsMet = answered is not null,
            LastDone = answered,
        };
    }

    // What an event asks for: its test or task; where it names neither, the count that the system's rules watch. The first since the event
    // counts: what is done later by routine does not make it late.
    private static DateTime? AnswerTo(SystemHistory history, VisitFacts latest, Rule rule, DateOnly since)
    {
        IReadOnlyList<string> tests = rule.Task is not null ? [] : rule.Test is { } asked ? [asked] : WatchesLegionella(history) ? Counts[..1] : Counts;
        DateTime? first = null;
        var at = latest;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            var visit = at.Visit;
            IEnumerable<DateTime?> done = rule.Task is { } task
                ? [Tasks.DoneAt(task, visit.Visit, at.Record)]
                : tests.SelectMany(at.ReadingsOf).Where(IsTaken).Select(reading => (DateTime?)TakenAt(visit, reading));
            foreach (var moment in done)
            {
                first = moment is { } then && history.DayOf(then) >= since && (first is null || then < first) ? then : first;
            }
        }

        return first;
    }

    internal static bool WatchesLegionella(SystemHistory history) => history.Firm.Rules.Any(other => TestCodes.Legionella.Equals(other.Test, StringComparison.OrdinalIgnoreCase)
        && history.System.Rules.Contains(other.Code, StringComparer.OrdinalIgnoreCase));

    private static Duty? Retest(SystemHistory history, VisitFacts latest, Rule rule)
    {
        if (rule.Test is not { } test || !HasVersion(history, rule, static version => version.RetestDays.Count > 0 && version.Bands.Count > 0))
        {
            return null;
        }

        // A result is judged by the rule of its day: a later version neither opens nor moves its retest.
        (VisitFacts? visit, Reading? reading, DateTime at, Rule? rule) worst = default;
        for (var at = latest.LatestWith(test); at is not null && latest.Place - at.Place < LongestLookBack; at = at.PreviousWith(test))
        {
            foreach (var reading in at.ReadingsOf(test))
            {
                if ((worst.reading is null || TakenAt(at.Visit, reading) > worst.at)
                    && VersionOn(history, rule, TakenAt(at.Visit, reading)) is { RetestDays.Count: > 0 } then && IsInBand(reading, then))
                {
                    worst = (at, reading, TakenAt(at.Visit, reading), then);
                }
            }
        }

        if (worst is not { reading: { } result, rule: { } inForce })
        {
            return null;
        }

        var received = ReceivedAt(history, worst.visit!.Visit, result);
        var disinfected = DisinfectedFrom(latest, received);
        var since = history.DayOf(disinfected ?? received);
        var (earliest, last) = (inForce.RetestDays[0], inForce.RetestDays[^1]);
        var notBefore = since.AddDays((int)earliest);
        var sampledOn = history.DayOf(worst.at);
        var (tooEarlyOn, isMet, retested) = ((DateOnly?)null, false, (DateTime?)null);
        for (var at = latest.LatestWith(test); at is not null && latest.Place - at.Place < LongestLookBack; at = at.PreviousWith(test))
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

        return new Duty(DutyKind.Retest, inForce, since, last)
        {
            NotBefore = notBefore,
            TooEarlyOn = tooEarlyOn,
            IsMet = isMet,
            LastDone = retested,
            Visit = worst.visit!.Visit.Visit.Id,
        };
    }

    // What must be told and was not, the oldest first: a newer result does not make up for it. All told: the newest.
    private static Duty? Notify(SystemHistory history, VisitFacts latest, Rule rule)
    {
        if (rule.Test is not { } test || !HasVersion(history, rule, static version => version.Bands.Any(band => band.NotifyWithinHours is not null)))
        {
            return null;
        }

        (DateTime Taken, Duty Duty) shown = default;
        for (var at = latest.LatestWith(test); at is not null && latest.Place - at.Place < LongestLookBack; at = at.PreviousWith(test))
        {
            foreach (var reading in at.ReadingsOf(test))
            {
                var taken = TakenAt(at.Visit, reading);
                if (VersionOn(history, rule, taken) is { } then && ResultBands.Of(then, reading)?.NotifyWithinHours is { } hours)
                {
                    var duty = ToTell(history, at.Visit, reading, then, hours);
                    var goesFirst = shown.Duty is not { } before || (duty.IsMet == before.IsMet ? (taken > shown.Taken) == duty.IsMet : !duty.IsMet);
                    shown = goesFirst ? (taken, duty) : shown;
                }
            }
        }

        return shown.Duty;
    }

    /// <summary>That an authority is to be told of one result.</summary>
    internal static Duty ToTell(SystemHistory history, SystemVisit visit, Reading result, Rule inForce, double hours)
    {
        var received = ReceivedAt(history, visit, result);
        var comesIn = ComesIn(visit, result);
        var told = history.Notifications
            .Where(note => note.At >= comesIn && note.Visit == visit.Visit.Id && note.Test.Equals(result.Test, StringComparison.OrdinalIgnoreCase) && note.Rule.Equals(inForce.Code, StringComparison.OrdinalIgnoreCase))
            .Select(note => (DateTime?)note.At).Min();
        var until = received.AddHours(hours);
        return new Duty(DutyKind.Notify, inForce, history.DayOf(received), hours / 24)
        {
            Visit = visit.Visit.Id,
            ReceivedAt = received,
            NotifyBy = until,
            NotifyUntil = history.DayOf(until),
            LastDone = told,
            NotifiedOn = told is { } moment ? history.DayOf(moment) : null,
            IsMet = told is not null,
        };
    }

    private static Rule? VersionOn(SystemHistory history, Rule rule, DateTime taken)
    {
        foreach (var version in RulesInForce.At(history, taken))
        {
            if (IsVersionOf(version, rule))
            {
                return version;
            }
        }

        return null;
    }

    // Where no receipt is on record, the first version of the visit that held the result: an amendment starts no clock anew.
    internal static DateTime ReceivedAt(SystemHistory history, SystemVisit visit, Reading reading) => (reading.ReceivedAt ?? reading.ResultAt)?.Utc
        ?? history.Versions.Where(version => version.Visit.Id == visit.Visit.Id && version.Record.Readings.Any(earlier => earlier.Value == reading.Value && earlier.Test.Equals(reading.Test, StringComparison.OrdinalIgnoreCase)))
            .Select(version => version.KnownFrom).Append(visit.KnownFrom).Min();

    /// <summary>Moment before which nobody could tell of a test's newest result of a visit.</summary>
    /// <param name="visit">The visit as it is known.</param>
    /// <param name="test">Code of the test.</param>
    /// <returns>Receipt, else the result, else the sample, UTC; null where the visit holds no such reading.</returns>
    public static DateTime? ToldFrom(SystemVisit visit, string test) =>
        visit.Record.Readings.Where(reading => reading.Test.Equals(test, StringComparison.OrdinalIgnoreCase)).MaxBy(reading => TakenAt(visit, reading)) is { } newest
            ? ComesIn(visit, newest)
            : null;

    // A later amendment of the visit does not move it, where receipt is not on record.
    internal static DateTime ComesIn(SystemVisit visit, Reading reading) => (reading.ReceivedAt ?? reading.ResultAt)?.Utc ?? TakenAt(visit, reading);

    private static bool HasVersion(SystemHistory history, Rule rule, Func<Rule, bool> which)
    {
        var rules = history.Firm.Rules;
        for (var i = 0; i < rules.Count; i++)
        {
            if (IsVersionOf(rules[i], rule) && which(rules[i]))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsVersionOf(Rule version, Rule rule) => ReferenceEquals(version, rule) || version.Code.Equals(rule.Code, StringComparison.OrdinalIgnoreCase);

    internal static bool IsInBand(Reading reading, Rule rule) => IsTaken(reading) && ResultBands.Of(rule, reading) is not null;

    // Results come in late: the newest sample need not stand in the newest visit.
    private static (DateTime? At, bool IsPending) Sampled(VisitFacts latest, string test)
    {
        DateTime? newest = null;
        var isPending = false;
        var seen = 0;
        for (var at = latest.LatestWith(test); at is not null && latest.Place - at.Place < LongestLookBack && seen < 3; at = at.PreviousWith(test))
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

    private static DateTime? NewestEvent(VisitFacts latest, EventType type)
    {
        var at = latest;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            DateTime? newest = null;
            var events = at.Record.Events;
            for (var j = 0; j < events.Count; j++)
            {
                var happened = events[j];
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
            var events = at.Record.Events;
            for (var j = 0; j < events.Count; j++)
            {
                var happened = events[j];
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
