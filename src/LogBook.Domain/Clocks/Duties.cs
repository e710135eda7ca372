using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>The clocks that run for a system on a day, by the rules in force on that day.</summary>
/// <remarks>
/// Intervals of tests and tasks run from the last time they were done, or from the first day on which both the rule and the
/// records were there. An event's duty runs from its newest event. A retest runs from the disinfection that followed the
/// result, else from its receipt. A sample whose result is still to come counts as taken.
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
    public static IReadOnlyList<Duty> Of(SystemHistory history, IEnumerable<SystemVisit> newestFirst, DateOnly day) =>
        Of(history, [.. newestFirst], RulesInForce.Of(history, day));

    internal static IReadOnlyList<Duty> Of(SystemHistory history, List<SystemVisit> visits, IEnumerable<Rule> rules)
    {
        if (visits.Count == 0)
        {
            return [];
        }

        var duties = new List<Duty>();
        foreach (var rule in rules)
        {
            if (EventNames.TryParse(rule.OnEvent, out var type))
            {
                Add(duties, AfterEvent(history, visits, rule, type));
                continue;
            }

            Add(duties, Interval(history, visits, rule));
            Add(duties, Retest(history, visits, rule));
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

    private static Duty? Interval(SystemHistory history, List<SystemVisit> visits, Rule rule)
    {
        if (rule.EveryDays is not > 0 || (rule.Test is null && rule.Task is null))
        {
            return null;
        }

        var last = rule.Test is { } test ? SampledAt(visits, test) : DoneAt(visits, rule.Task!);
        var since = last is { } moment ? history.DayOf(moment) : First(history, visits, rule);
        return new Duty(DutyKind.Interval, rule, since, rule.EveryDays.Value + (rule.GraceDays ?? 0), OperationOf(history, rule));
    }

    private static Duty? AfterEvent(SystemHistory history, List<SystemVisit> visits, Rule rule, EventType type)
    {
        if ((rule.WithinDays ?? rule.EveryDays) is not { } within || NewestEvent(visits, type) is not { } happened)
        {
            return null;
        }

        var since = history.DayOf(happened);
        return new Duty(DutyKind.AfterEvent, rule, since, within + (rule.GraceDays ?? 0), OperationOf(history, rule))
        {
            Event = type,
            IsMet = AnswerTo(history, visits, rule) is { } answered && history.DayOf(answered) >= since,
        };
    }

    // What an event asks for: its test or task; where it names neither, the count that the system's rules watch.
    private static DateTime? AnswerTo(SystemHistory history, List<SystemVisit> visits, Rule rule)
    {
        if (rule.Task is { } task)
        {
            return DoneAt(visits, task);
        }

        if (rule.Test is { } test)
        {
            return SampledAt(visits, test);
        }

        var watched = history.Firm.Rules.Any(other => TestCodes.Legionella.Equals(other.Test, StringComparison.OrdinalIgnoreCase)
            && history.System.Rules.Contains(other.Code, StringComparer.OrdinalIgnoreCase));
        return (watched ? Counts.Take(1) : Counts).Select(count => SampledAt(visits, count)).Max();
    }

    private static Duty? Retest(SystemHistory history, List<SystemVisit> visits, Rule rule)
    {
        if (rule.Test is not { } test || rule.RetestDays.Count == 0 || rule.Bands.Count == 0)
        {
            return null;
        }

        var worst = visits.Take(LongestLookBack)
            .SelectMany(visit => visit.Record.Readings.Where(r => Is(r, test) && IsInBand(r, rule)).Select(reading => (visit, reading)))
            .OrderByDescending(pair => TakenAt(pair.visit, pair.reading))
            .FirstOrDefault();
        if (worst.reading is not { } result)
        {
            return null;
        }

        var received = (result.ReceivedAt ?? result.ResultAt)?.Utc ?? worst.visit.KnownFrom;
        var disinfected = visits.Take(LongestLookBack)
            .SelectMany(visit => visit.Record.Events.Where(e => e.Type == EventType.Disinfected).Select(e => (e.At ?? visit.Visit.Arrived).Utc))
            .Where(moment => moment >= received)
            .Order()
            .Select(moment => (DateTime?)moment)
            .FirstOrDefault();
        var since = history.DayOf(disinfected ?? received);
        var (earliest, latest) = (rule.RetestDays[0], rule.RetestDays[^1]);
        var notBefore = since.AddDays((int)earliest);
        var later = visits.Take(LongestLookBack)
            .SelectMany(visit => visit.Record.Readings.Where(r => Is(r, test) && IsTaken(r)).Select(r => history.DayOf(TakenAt(visit, r))))
            .Where(sampled => sampled >= since && sampled > history.DayOf(TakenAt(worst.visit, result)))
            .ToList();
        return new Duty(DutyKind.Retest, rule, since, latest)
        {
            NotBefore = notBefore,
            TooEarlyOn = later.Where(sampled => sampled < notBefore).Select(sampled => (DateOnly?)sampled).Max(),
            IsMet = later.Any(sampled => sampled >= notBefore),
        };
    }

    private static bool IsInBand(Reading reading, Rule rule)
    {
        if (!IsTaken(reading) || reading.Value is not { } value || reading.Qualifier == "<" || reading.NotQuantifiable == true)
        {
            return false;
        }

        return rule.Bands.Any(band => Units.Convert(value, reading.Unit, band.Unit) is { HasValue: true } converted && converted.Value >= band.From);
    }

    // Results come in late: the newest sample need not stand in the newest visit.
    private static DateTime? SampledAt(List<SystemVisit> visits, string test)
    {
        DateTime? newest = null;
        var seen = 0;
        for (var i = 0; i < visits.Count && i < LongestLookBack && seen < 3; i++)
        {
            var taken = visits[i].Record.Readings.Where(r => Is(r, test) && IsTaken(r)).Select(r => (DateTime?)TakenAt(visits[i], r)).Max();
            seen += taken is null ? 0 : 1;
            newest = taken > newest || newest is null ? taken ?? newest : newest;
        }

        return newest;
    }

    private static DateTime? DoneAt(List<SystemVisit> visits, string task) =>
        visits.Select(visit => Tasks.DoneAt(task, visit.Visit, visit.Record)).FirstOrDefault(moment => moment is not null);

    private static DateTime? NewestEvent(List<SystemVisit> visits, EventType type) => visits.Take(LongestLookBack)
        .Select(visit => visit.Record.Events.Where(e => e.Type == type).Select(e => (DateTime?)(e.At ?? visit.Visit.Arrived).Utc).Max()
            ?? (type == EventType.Started && visit.Visit.Kind == VisitKind.StartUp ? visit.Visit.Arrived.Utc : null))
        .FirstOrDefault(moment => moment is not null);

    private static DateOnly First(SystemHistory history, List<SystemVisit> visits, Rule rule)
    {
        var first = history.DayOf(visits[^1].At);
        var since = history.Firm.Rules.Where(r => r.Code.Equals(rule.Code, StringComparison.OrdinalIgnoreCase)).Min(r => r.From);
        return since > first ? since : first;
    }

    private static Operation? OperationOf(SystemHistory history, Rule rule) => rule.OperatingDaysOnly == true ? history.System.Operation : null;

    private static bool Is(Reading reading, string test) => reading.Test.Equals(test, StringComparison.OrdinalIgnoreCase);

    private static bool IsTaken(Reading reading) => reading.NotTaken is null or SystemVisit.ResultPending;

    private static DateTime TakenAt(SystemVisit visit, Reading reading) => (reading.TakenAt ?? visit.Visit.Arrived).Utc;
}
