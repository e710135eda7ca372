using System.Globalization;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;
using LogBook.Entry.Closing;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;

namespace LogBook.Entry.Since;

/// <summary>What the last visits left behind for this one.</summary>
public static class SinceList
{
    /// <summary>Lines for the system in hand.</summary>
    /// <param name="state">The form.</param>
    /// <returns>What waits first.</returns>
    public static IReadOnlyList<SinceLine> Of(FormState state)
    {
        if (state.Plan is not { } plan)
        {
            return [];
        }

        var visits = state.Previous.Where(v => v.Id != state.Draft.Id && v.Arrived < state.Draft.Arrived() && v.Systems.Any(s => Is(s, plan))).OrderBy(v => v.Arrived.Utc).ToList();
        return visits.Count == 0
            ? [new SinceLine(state.T(SinceTexts.FirstVisit))]
            : [Last(state, visits[^1]), .. Pending(state, plan, visits), .. Left(state, plan, visits), .. Lots(state, plan)];
    }

    /// <summary>Results of slides and bottles that are still to come.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <param name="visits">Its visits, latest last.</param>
    /// <returns>Lines with the visit they belong to.</returns>
    public static IEnumerable<SinceLine> Pending(FormState state, SystemPlan plan, IReadOnlyList<Visit> visits)
    {
        foreach (var visit in visits.TakeLast(6))
        {
            foreach (var reading in visit.Systems.Where(s => Is(s, plan)).SelectMany(s => s.Readings).Where(r => r.NotTaken == SystemVisit.ResultPending))
            {
                var name = state.T(FieldNames.OfTest(new ReadingKey(reading.At, reading.Test, null), state.Firm));
                var taken = reading.TakenAt ?? visit.Arrived;
                var hours = Math.Floor((state.Clock.GetUtcNow().UtcDateTime - taken.Utc).TotalHours).ToString("0", CultureInfo.InvariantCulture);
                yield return new SinceLine(
                    state.T(SinceTexts.Pending, name, Shown.DayAndTime(taken.Wall, state.Language), hours), "◷", visit.Id, state.T(SinceTexts.EnterResult, name));
            }
        }
    }

    private static bool Is(VisitedSystem system, SystemPlan plan) => system.System.Equals(plan.System.Code, StringComparison.OrdinalIgnoreCase);

    private static SinceLine Last(FormState state, Visit visit)
    {
        var days = (DateOnly.FromDateTime(state.Draft.Arrived().Wall).DayNumber - DateOnly.FromDateTime(visit.Arrived.Wall).DayNumber).ToString(CultureInfo.InvariantCulture);
        var person = state.Firm.People.TryGetValue(visit.Technician, out var known) ? known.Name : visit.Technician;
        return new SinceLine(state.T(SinceTexts.LastVisit, Shown.Day(DateOnly.FromDateTime(visit.Arrived.Wall), state.Language), days, person));
    }

    private static IEnumerable<SinceLine> Left(FormState state, SystemPlan plan, IReadOnlyList<Visit> visits)
    {
        // A delivery or a stop reads little and says nothing of the rest: back to the last visit that read everything.
        var visit = visits[^1];
        var full = visits.ToList().FindLastIndex(v => VisitShape.ReadsEverything(v.Kind ?? VisitKind.Routine));
        var since = visits.Skip(Math.Max(full, 0)).SelectMany(v => v.Systems.Where(s => Is(s, plan))).ToList();
        foreach (var (then, reading) in visits.Skip(Math.Max(full, 0))
            .SelectMany(v => v.Systems.Where(s => Is(s, plan)).SelectMany(s => s.Readings), (then, reading) => (then, reading))
            .Where(r => r.reading.Source != ReadingSource.Controller && r.reading.NotTaken is null).GroupBy(r => (r.reading.At, r.reading.Test)).Select(g => g.Last()))
        {
            if (OutsideRange.Of(state, plan, reading, then) is { } outside)
            {
                yield return new SinceLine(state.T(SinceTexts.Outside, outside.Words(state)), outside.Place.Shape);
            }
        }

        foreach (var alarm in since.SelectMany(s => s.Alarms).GroupBy(a => (a.Output?.ToUpperInvariant(), a.Text.Trim().ToUpperInvariant())).Select(g => g.Last()).Where(a => a.Standing == true))
        {
            yield return new SinceLine(state.T(SinceTexts.AlarmStood, alarm.Text), "◆");
        }

        // Of a switch the last word counts, however long ago: nobody says again what was not touched.
        var positions = visits.SelectMany(v => v.Systems.Where(s => Is(s, plan))).SelectMany(s => s.Switches)
            .Select(s => (s.Output, Left: s.Left ?? (s.Found == SwitchPosition.Automatic ? s.Found : null)))
            .Where(s => s.Left is not null);
        foreach (var position in positions.GroupBy(s => s.Output, StringComparer.OrdinalIgnoreCase).Select(g => g.Last()).Where(s => s.Left != SwitchPosition.Automatic))
        {
            yield return new SinceLine(state.T(SinceTexts.SwitchStood, position.Output, state.T(VisitTexts.NameOf(position.Left!.Value))), "◆");
        }

        foreach (var asked in visit.Recommendations.Where(r => r.State is null or RecommendationState.Asked))
        {
            yield return new SinceLine(state.T(SinceTexts.Asked, asked.Text), "?");
        }

        if (!string.IsNullOrWhiteSpace(visit.Notes))
        {
            yield return new SinceLine(state.T(SinceTexts.NotedThen, visit.Notes));
        }
    }

    // Lots that were used here last time and have expired since: better known before the kit is opened.
    private static IEnumerable<SinceLine> Lots(FormState state, SystemPlan plan)
    {
        var today = DateOnly.FromDateTime(state.Draft.Arrived().Wall);
        var used = plan.Visits.Count == 0 ? [] : plan.Visits[^1].System.Readings.Select(r => r.Lot).OfType<string>().Distinct(StringComparer.OrdinalIgnoreCase);
        foreach (var lot in used.Select(code => state.Firm.Lots.GetValueOrDefault(code)).Where(l => l?.Expires < today))
        {
            yield return new SinceLine(
                state.T(SinceTexts.Expired, lot!.Code, state.T(TestCatalogue.Find(lot.Test, state.Firm)?.Name ?? TestTexts.NameOf(lot.Test)), Shown.Day(lot.Expires!.Value, state.Language)), "◆");
        }
    }
}
