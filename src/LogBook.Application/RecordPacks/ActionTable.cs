using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Application.RecordPacks;

/// <summary>Observations, actions and recommendations: what was seen, asked for and done.</summary>
internal static class ActionTable
{
    public static RecordTable Of(RecordWords words) => new(
        RecordTexts.Actions,
        [
            new(RecordTexts.Day, 1.2), new(RecordTexts.System, 0.8), new(RecordTexts.Kind, 1.4), new(RecordTexts.What, 4), new(RecordTexts.Owner, 1.2), new(RecordTexts.Due, 1.2),
            new(RecordTexts.State, 1.1), new(RecordTexts.StateOf, 1.2), new(RecordTexts.Visit, 0),
        ],
        [.. Observations(words).Concat(Actions(words)).Concat(Recommendations(words)).OrderBy(row => (DateOnly)row.Cells[0]!)],
        RecordTexts.ActionsIntro);

    private static IEnumerable<RecordRow> Observations(RecordWords words) =>
        from pair in words.Records()
        from seen in pair.Record.Observations
        select new RecordRow(
        [
            words.DayOf(pair.Visit.Visit), pair.Record.System, words[RecordTexts.Observation], $"{seen.About}: {seen.Text}", "", null, seen.Severity is { } severity ? words[UrgencyOf(severity)] : "", null, pair.Visit.Visit.Id.ToString(),
        ]);

    // An action lives over visits under one identity: told once, with the state that the last visit gave it.
    private static IEnumerable<RecordRow> Actions(RecordWords words) => words.Pack.Systems
        .SelectMany(system => system.History.Visits.SelectMany(visit => visit.Record.Actions.Select(action => (visit.Visit, system.History.System.Code, Action: action))))
        .GroupBy(entry => entry.Action.Id ?? Guid.CreateVersion7())
        .Select(group => (First: group.First(), Last: group.Last()))
        .Where(entry => words.DayOf(entry.First.Visit) <= words.Pack.To && words.DayOf(entry.Last.Visit) >= words.Pack.From)
        .Select(entry => new RecordRow(
        [
            words.DayOf(entry.First.Visit), entry.First.Code, words[RecordTexts.Action], entry.Last.Action.For is { } about ? $"{about}: {entry.Last.Action.Text}" : entry.Last.Action.Text,
            entry.Last.Action.Owner ?? "", entry.Last.Action.Due, words[StateOf(entry.Last.Action.State)], words.DayOf(entry.Last.Visit), entry.First.Visit.Id.ToString(),
        ]));

    private static IEnumerable<RecordRow> Recommendations(RecordWords words) => words.Pack.Visits.Where(visit => visit.Counts)
        .SelectMany(visit => visit.Visit.Recommendations.Select(asked => (visit.Visit, Asked: asked)))
        .GroupBy(entry => entry.Asked.Id ?? Guid.CreateVersion7())
        .Select(group => (First: group.First(), Last: group.Last()))
        .Select(entry => new RecordRow(
        [
            words.DayOf(entry.First.Visit), "", words[RecordTexts.Recommendation], entry.Last.Asked.Consequence is { } otherwise ? $"{entry.Last.Asked.Text} ({otherwise})" : entry.Last.Asked.Text,
            "", null, words[StateOf(entry.Last.Asked.State)], words.DayOf(entry.Last.Visit), entry.First.Visit.Id.ToString(),
        ]));

    private static Text StateOf(ActionState? state) => state switch
    {
        ActionState.Done => RecordTexts.Done,
        ActionState.Dropped => RecordTexts.Dropped,
        _ => RecordTexts.Open,
    };

    private static Text StateOf(RecommendationState? state) => state switch
    {
        RecommendationState.Accepted => RecordTexts.Accepted,
        RecommendationState.Declined => RecordTexts.Declined,
        _ => RecordTexts.Asked,
    };

    private static Text UrgencyOf(Severity severity) => severity switch
    {
        Severity.Act => Domain.Summaries.SummaryTexts.BeforeLeaving,
        Severity.Plan => Domain.Summaries.SummaryTexts.ByNextVisit,
        _ => Domain.Summaries.SummaryTexts.KeepEye,
    };
}
