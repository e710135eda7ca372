using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>What the rules of a system asked for in a period, when it was met, and each gap.</summary>
/// <remarks>
/// The same clocks as <see cref="Duties"/>, told as a record instead of as a state: every interval between two times it was
/// done, every event, every result in a band and every result that an authority had to be told. A spell is judged by the version of the rule in force on each of its days,
/// and by what is recorded today: a sample entered late counts from the day it was taken.
/// </remarks>
public static class RuleRecords
{
    private static readonly string[] Counts = [TestCodes.Legionella, TestCodes.ColonyCount, TestCodes.DipSlide];

    /// <summary>The record of every rule that applied to the system in the period.</summary>
    /// <param name="history">Set-up, rules and visits of the system; visits after the period tell when something was done at last.</param>
    /// <param name="from">First day of the period, in the site's zone.</param>
    /// <param name="to">Last day of the period, or today where that is earlier.</param>
    /// <returns>One record for each rule, by code; none where no rule applies.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The period ends before it begins.</exception>
    public static IReadOnlyList<RuleRecord> Of(SystemHistory history, DateOnly from, DateOnly to)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(to, from);
        return
        [
            .. history.System.Rules.Distinct(StringComparer.OrdinalIgnoreCase)
                .Select(code => VersionsOf(history, code))
                .Where(versions => versions.Exists(version => version.Rule.From <= to && version.End >= from))
                .Select(versions => Record(history, versions, from, to))
                .OrderBy(record => record.Code, StringComparer.OrdinalIgnoreCase),
        ];
    }

    private static RuleRecord Record(SystemHistory history, List<Dated> versions, DateOnly from, DateOnly to)
    {
        List<Rule> inForce = [.. versions.Where(version => version.Rule.From <= to && version.End >= from).Select(version => version.Rule)];
        DateOnly? first = history.Visits.Count == 0 ? null : history.DayOf(history.Visits[0].At);
        List<RuleSpell> spells = first is null ? [] : [.. Intervals(history, versions, first.Value, to), .. Events(history, versions, to), .. Retests(history, versions, to), .. Notices(history, versions, to)];
        var begins = inForce[0].From > from ? inForce[0].From : from;
        return new RuleRecord
        {
            Code = inForce[^1].Code,
            Versions = inForce,
            Spells = [.. spells.Where(spell => spell.Since <= to && (spell.DoneOn ?? to) >= from).OrderBy(spell => spell.Since).ThenBy(spell => spell.Kind)],
            Unknown = first is null ? (begins, to) : first > begins ? (begins, first.Value.AddDays(-1) < to ? first.Value.AddDays(-1) : to) : null,
            IsWithoutClock = inForce.TrueForAll(rule => !HasClock(rule)),
        };
    }

    private static bool HasClock(Rule rule) => rule.OnEvent is not null
        ? EventNames.TryParse(rule.OnEvent, out _) && (rule.WithinDays ?? rule.EveryDays) is not null
        : (rule.EveryDays is > 0 && (rule.Test ?? rule.Task) is not null) || (rule.Test is not null && ((rule.RetestDays.Count > 0 && rule.Bands.Count > 0) || rule.Bands.Any(band => band.NotifyWithinHours is not null)));

    // A version ends the day before the next one begins.
    private static List<Dated> VersionsOf(SystemHistory history, string code)
    {
        var rules = history.Firm.Rules.Where(rule => rule.Code.Equals(code, StringComparison.OrdinalIgnoreCase)).OrderBy(rule => rule.From).ToList();
        return
        [
            .. rules.Select((rule, place) =>
            {
                var next = place + 1 < rules.Count ? rules[place + 1].From.AddDays(-1) : DateOnly.MaxValue;
                return new Dated(rule, rule.To < next ? rule.To.Value : next);
            }).Where(version => version.End >= version.Rule.From),
        ];
    }

    private static IEnumerable<RuleSpell> Intervals(SystemHistory history, List<Dated> versions, DateOnly first, DateOnly to)
    {
        var clocked = versions.Where(version => version.Rule is { OnEvent: null, EveryDays: > 0 } rule && (rule.Test ?? rule.Task) is not null).ToList();
        if (clocked.Count == 0)
        {
            yield break;
        }

        var begins = versions[0].Rule.From > first ? versions[0].Rule.From : first;
        var done = clocked.SelectMany(version => DoneOn(history, version.Rule)).Distinct().Order().ToList();
        var before = done.LastOrDefault(day => day <= begins);
        var since = before == default ? begins : before;
        foreach (var day in done.Where(day => day > since).Append(DateOnly.MaxValue))
        {
            DateOnly? doneOn = day == DateOnly.MaxValue ? null : day;
            if (since > to)
            {
                yield break;
            }

            if (Interval(history, clocked, since, doneOn, to) is { } spell)
            {
                yield return spell;
            }

            since = day;
        }
    }

    private static RuleSpell? Interval(SystemHistory history, List<Dated> versions, DateOnly since, DateOnly? doneOn, DateOnly to)
    {
        var end = doneOn is { } done && done <= to ? done : to;
        Dated? last = null;
        foreach (var version in versions.Where(version => version.Rule.From <= end && version.End >= since))
        {
            last = version;
            var duty = IntervalOf(history, version.Rule, since);
            var (begin, finish) = (version.Rule.From > since ? version.Rule.From : since, version.End < end ? version.End : end);
            if (FirstOver(history, duty, begin, finish) is not null)
            {
                return Spell(duty, doneOn, RuleStanding.Missed, end);
            }
        }

        // A rule that ended while its time ran asks for nothing more: neither met by what came later, nor running for ever.
        return last is null || last.End < end ? null : Spell(IntervalOf(history, last.Rule, since), doneOn, doneOn <= to ? RuleStanding.Met : RuleStanding.Running, end);
    }

    private static IEnumerable<RuleSpell> Events(SystemHistory history, List<Dated> versions, DateOnly to)
    {
        foreach (var version in versions)
        {
            if (!EventNames.TryParse(version.Rule.OnEvent, out var type) || (version.Rule.WithinDays ?? version.Rule.EveryDays) is not { } within)
            {
                continue;
            }

            var days = EventDays(history, type);
            var answers = AnswersTo(history, version.Rule);
            foreach (var since in days.Where(day => day >= version.Rule.From && day <= version.End && day <= to))
            {
                var duty = DutyOf(history, DutyKind.AfterEvent, version.Rule, since, within);
                var again = days.Find(day => day > since);
                DateOnly? doneOn = answers.Exists(day => day >= since) ? answers.Find(day => day >= since) : null;

                // The clock starts anew with the next such event: before its time was over, nothing was missed.
                if (again != default && again <= to && (doneOn is null || doneOn >= again) && !IsOver(duty, again))
                {
                    continue;
                }

                yield return Judged(duty, doneOn, to) with { Event = type };
            }
        }
    }

    private static IEnumerable<RuleSpell> Retests(SystemHistory history, List<Dated> versions, DateOnly to)
    {
        foreach (var version in versions)
        {
            var rule = version.Rule;
            if (rule.OnEvent is not null || rule.Test is not { } test || rule.RetestDays.Count == 0 || rule.Bands.Count == 0)
            {
                continue;
            }

            var samples = Samples(history, test).OrderBy(sample => sample.TakenAt).ToList();
            foreach (var (visit, reading, takenAt) in samples.Where(sample => Duties.IsInBand(sample.Reading, rule)))
            {
                var received = Duties.ReceivedAt(history, visit, reading);
                var taken = history.DayOf(takenAt);
                if (taken < rule.From || taken > version.End || history.DayOf(received) > to)
                {
                    continue;
                }

                var disinfected = Happened(history, EventType.Disinfected).Where(moment => moment >= received).Order().Cast<DateTime?>().FirstOrDefault();
                var since = history.DayOf(disinfected ?? received);
                var notBefore = since.AddDays((int)rule.RetestDays[0]);
                var doneOn = samples.Select(sample => history.DayOf(sample.TakenAt)).Where(day => day > history.DayOf(takenAt) && day >= notBefore).Order().Cast<DateOnly?>().FirstOrDefault();
                yield return Judged(new Duty(DutyKind.Retest, rule, since, rule.RetestDays[^1]), doneOn, to);
            }
        }
    }

    // Each result that an authority had to be told, judged by the hour.
    private static IEnumerable<RuleSpell> Notices(SystemHistory history, List<Dated> versions, DateOnly to)
    {
        foreach (var version in versions.Where(version => version.Rule.Test is not null))
        {
            foreach (var (visit, reading, takenAt) in Samples(history, version.Rule.Test!))
            {
                var taken = history.DayOf(takenAt);
                if (taken < version.Rule.From || taken > version.End || ResultBands.Of(version.Rule, reading)?.NotifyWithinHours is not { } hours)
                {
                    continue;
                }

                var duty = Duties.ToTell(history, visit, reading, version.Rule, hours);
                var (dueBy, doneOn) = (duty.NotifyUntil!.Value, duty.NotifiedOn <= to ? duty.NotifiedOn : null);
                var isLate = doneOn is null ? to > dueBy : duty.LastDone > duty.NotifyBy;
                yield return new RuleSpell
                {
                    Kind = DutyKind.Notify,
                    Rule = version.Rule,
                    Since = duty.Since,
                    DueBy = dueBy,
                    DoneOn = duty.NotifiedOn,
                    Standing = isLate ? RuleStanding.Missed : doneOn is null ? RuleStanding.Running : RuleStanding.Met,
                    DaysOver = isLate ? Math.Max(1, (doneOn ?? to).DayNumber - dueBy.DayNumber) : 0,
                };
            }
        }
    }

    private static RuleSpell Judged(Duty duty, DateOnly? doneOn, DateOnly to)
    {
        var end = doneOn is { } done && done <= to ? done : to;
        return Spell(duty, doneOn, IsOver(duty, end) ? RuleStanding.Missed : doneOn <= to ? RuleStanding.Met : RuleStanding.Running, end);
    }

    private static RuleSpell Spell(Duty duty, DateOnly? doneOn, RuleStanding standing, DateOnly end) => new()
    {
        Kind = duty.Kind,
        Rule = duty.Rule,
        Since = duty.Since,
        DueBy = duty.LastDay,
        DoneOn = doneOn,
        Standing = standing,
        DaysOver = standing == RuleStanding.Missed ? Math.Max(1, (doneOn ?? end).DayNumber - duty.LastDay.DayNumber) : 0,
    };

    private static bool IsOver(Duty duty, DateOnly day) => duty.PassedOn(day) > duty.Days;

    // Days of a stop are passed over: the first day over need not be the one after the last in time.
    private static DateOnly? FirstOver(SystemHistory history, Duty duty, DateOnly from, DateOnly to)
    {
        var day = duty.LastDay.AddDays(1) > from ? duty.LastDay.AddDays(1) : from;
        for (; day <= to; day = day.AddDays(1))
        {
            if (duty.Rule.OperatingDaysOnly != true || OperatingDays.Runs(history.System.Operation, day))
            {
                return day;
            }
        }

        return null;
    }

    private static Duty DutyOf(SystemHistory history, DutyKind kind, Rule rule, DateOnly since, double days) =>
        new(kind, rule, since, days + (rule.GraceDays ?? 0), rule.OperatingDaysOnly == true ? history.System.Operation : null);

    private static Duty IntervalOf(SystemHistory history, Rule rule, DateOnly since) =>
        DutyOf(history, DutyKind.Interval, rule, since, Shortened.Days(history, rule, since, Shortened.Of(history, rule, since)));

    private static List<DateOnly> DoneOn(SystemHistory history, Rule rule)
    {
        var moments = rule.Test is { } test
            ? Samples(history, test).Select(sample => sample.TakenAt)
            : history.Visits.Select(visit => Tasks.DoneAt(rule.Task!, visit.Visit, visit.Record)).Where(moment => moment is not null).Select(moment => moment!.Value);
        return [.. moments.Select(history.DayOf).Distinct().Order()];
    }

    // What an event asks for: its test or task; where it names neither, the count that the system's rules watch.
    private static List<DateOnly> AnswersTo(SystemHistory history, Rule rule)
    {
        if (rule.Task is not null || rule.Test is not null)
        {
            return DoneOn(history, rule.Task is not null ? rule with { Test = null } : rule);
        }

        var watched = Duties.WatchesLegionella(history);
        return [.. (watched ? Counts.Take(1) : Counts).SelectMany(test => Samples(history, test)).Select(sample => history.DayOf(sample.TakenAt)).Distinct().Order()];
    }

    private static IEnumerable<(SystemVisit Visit, Reading Reading, DateTime TakenAt)> Samples(SystemHistory history, string test) =>
        from visit in history.Visits
        from reading in visit.Record.Readings
        where test.Equals(reading.Test, StringComparison.OrdinalIgnoreCase) && Duties.IsTaken(reading)
        select (visit, reading, Duties.TakenAt(visit, reading));

    private static List<DateOnly> EventDays(SystemHistory history, EventType type) => [.. Happened(history, type)
        .Concat(type == EventType.Started ? history.Visits.Where(visit => visit.Visit.Kind == VisitKind.StartUp && visit.Record.Events.All(e => e.Type != EventType.Started)).Select(visit => visit.At) : [])
        .Select(history.DayOf).Distinct().Order()];

    private static IEnumerable<DateTime> Happened(SystemHistory history, EventType type) =>
        from visit in history.Visits
        from happened in visit.Record.Events
        where happened.Type == type
        select (happened.At ?? visit.Visit.Arrived).Utc;

    private sealed record Dated(Rule Rule, DateOnly End);
}
