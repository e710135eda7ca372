using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>The newest result of one count of a system, with what the rule in force on the day of its sample says, what was done and what is open.</summary>
/// <param name="Test">Code of the test: Legionella, colony count or dip slide.</param>
/// <param name="Visit">Visit that holds the result.</param>
/// <param name="Reading">The result as entered.</param>
/// <param name="TakenAt">When the sample was taken, UTC.</param>
/// <param name="ReceivedAt">When the result was received, UTC.</param>
/// <param name="Converted">The same number in CFU/mL, CFU/100 mL and CFU/L; empty where there is no number.</param>
/// <param name="Rule">Rule with bands in force on the day of the sample, or null.</param>
/// <param name="Band">Its highest band that the result reaches; null below all of them or without a number.</param>
/// <param name="Clocks">Countdown and retest that results of this count have set running, this one or one before it.</param>
/// <param name="Done">What is on record since the result in a band came in, oldest first; empty where none lies in a band.</param>
public sealed record CountResponse(
    string Test,
    Guid Visit,
    Reading Reading,
    DateTime TakenAt,
    DateTime ReceivedAt,
    IReadOnlyList<Amount> Converted,
    Rule? Rule,
    RuleBand? Band,
    IReadOnlyList<RunningClock> Clocks,
    IReadOnlyList<ResponseAct> Done)
{
    private const int LongestLookBack = 60;

    private static readonly string[] Tests = [TestCodes.Legionella, TestCodes.ColonyCount, TestCodes.DipSlide];

    private static readonly Text Sampled = new("{0} sampled", "{0}: muestra tomada", "{0}: amostra colhida");
    private static readonly Text ActionDone = new("Action done: {0}", "Acción hecha: {0}", "Ação feita: {0}");
    private static readonly Text Told = new("{0} told {1}: {2}", "{0} avisó a {1}: {2}", "{0} avisou {1}: {2}");

    /// <summary>Whether a newer sample of the same count waits for its result.</summary>
    public DateTime? PendingSince { get; private init; }

    /// <summary>The newest result of each count.</summary>
    /// <param name="history">The system's history.</param>
    /// <param name="utc">Moment, UTC; what became known later is not looked at.</param>
    /// <param name="shareSoon">Share of the time that is left when a clock is called due soon, 0 to 1.</param>
    /// <returns>One entry for each count with a result in the last 60 visits, Legionella first.</returns>
    public static IReadOnlyList<CountResponse> Of(SystemHistory history, DateTime utc, double shareSoon)
    {
        VisitFacts? latest = null;
        foreach (var visit in history.AsKnownAt(utc).Visits.TakeLast(LongestLookBack))
        {
            latest = new VisitFacts(history, visit, latest);
        }

        if (latest is null)
        {
            return [];
        }

        var duties = latest.DutiesOn(history.DayOf(utc));
        return [.. Tests.Select(test => Of(history, latest, test, duties, shareSoon)).OfType<CountResponse>()];
    }

    private static CountResponse? Of(SystemHistory history, VisitFacts latest, string test, IReadOnlyList<Duty> duties, double shareSoon)
    {
        var all = latest.Back()
            .SelectMany(visit => visit.ReadingsOf(test).Select(reading => (visit, reading, taken: (reading.TakenAt ?? visit.Visit.Visit.Arrived).Utc)))
            .OrderByDescending(sample => sample.taken)
            .ToList();
        var newest = all.Find(sample => sample.reading.NotTaken is null && (sample.reading.Value is not null || sample.reading.NotQuantifiable == true));
        if (newest.reading is not { } result)
        {
            return null;
        }

        var rule = RulesInForce.ForTest(history, test, history.DayOf(newest.taken));
        var own = duties.Where(duty => duty.Kind is DutyKind.Notify or DutyKind.Retest && test.Equals(duty.Rule.Test, StringComparison.OrdinalIgnoreCase)).ToList();
        var received = Duties.ReceivedAt(history, newest.visit.Visit, result);
        return new CountResponse(
            test,
            newest.visit.Visit.Visit.Id,
            result,
            newest.taken,
            received,
            result.Value is { } value ? [.. Everywhere(value, result.Unit)] : [],
            rule,
            rule is null ? null : ResultBands.Of(rule, result),
            [.. own.Select(duty => RunningClock.Of(history, duty, shareSoon))],
            [.. own.Count == 0 ? [] : DoneSince(latest, test, First(latest, own, Duties.ReceivedAt) ?? received, First(latest, own, (_, visit, reading) => Duties.ComesIn(visit, reading)) ?? received)])
        {
            PendingSince = all.Find(sample => sample.reading.NotTaken == SystemVisit.ResultPending && sample.taken > newest.taken) is { reading: not null, taken: var pending } ? pending : null,
        };
    }

    private static IEnumerable<Amount> Everywhere(double value, string unit) =>
        new[] { UnitCodes.CfuPerMl, UnitCodes.CfuPer100Ml, UnitCodes.CfuPerL }
            .Select(other => (other, converted: Units.Convert(value, unit, other)))
            .Where(pair => pair.converted.HasValue)
            .Select(pair => new Amount(pair.converted.Value, pair.other));

    // Of the result that set the clocks running, which may be older than the newest one. The countdown asks the same, so both tell the same.
    private static DateTime? First(VisitFacts latest, List<Duty> duties, Func<SystemHistory, SystemVisit, Reading, DateTime> moment)
    {
        var visits = duties.Select(duty => duty.Visit).ToHashSet();
        return latest.Back().Where(visit => visits.Contains(visit.Visit.Visit.Id))
            .SelectMany(visit => duties.Where(duty => duty.Visit == visit.Visit.Visit.Id).SelectMany(duty => visit.ReadingsOf(duty.Rule.Test!))
                .Select(reading => (DateTime?)moment(latest.History, visit.Visit, reading)))
            .Min();
    }

    private static IEnumerable<ResponseAct> DoneSince(VisitFacts latest, string test, DateTime received, DateTime comesIn)
    {
        var acts = new List<ResponseAct>();
        foreach (var visit in latest.Back())
        {
            var id = visit.Visit.Visit.Id;
            acts.AddRange(visit.Record.Events
                .Where(happened => happened.Type is EventType.Disinfected or EventType.Cleaned or EventType.Drained)
                .Select(happened => new ResponseAct((happened.At ?? visit.Visit.Visit.Arrived).Utc, id, new Said(VisitTexts.NameOf(happened.Type)))));
            acts.AddRange(visit.ReadingsOf(test)
                .Where(reading => reading.NotTaken is null or SystemVisit.ResultPending)
                .Select(reading => new ResponseAct((reading.TakenAt ?? visit.Visit.Visit.Arrived).Utc, id, new Said(Sampled, TestTexts.NameOf(test)))));
            acts.AddRange(visit.Record.Actions
                .Where(action => action.State == ActionState.Done && test.Equals(action.For, StringComparison.OrdinalIgnoreCase))
                .Select(action => new ResponseAct(visit.Visit.At, id, new Said(ActionDone, action.Text))));
        }

        // An authority may be told as soon as the number is there, before the visit that holds it is over.
        acts.RemoveAll(act => act.At < received);
        acts.AddRange(latest.History.Notifications
            .Where(note => note.At >= comesIn && note.Test.Equals(test, StringComparison.OrdinalIgnoreCase))
            .Select(note => new ResponseAct(note.At, null, new Said(Told, note.By, note.To, note.How))));
        return acts.OrderBy(act => act.At);
    }
}
