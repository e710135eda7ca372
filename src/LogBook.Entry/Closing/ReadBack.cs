using System.Globalization;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Settings;
using LogBook.Domain.Summaries;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Photos;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>Everything entered, as it was understood, to be read once more before closing.</summary>
public static class ReadBack
{
    private static readonly HashSet<string> Silent = new(StringComparer.Ordinal) { "row", "id", "removed", "follows", "settleStart", "mode", "enteredAt", "kindBefore", "tests", "photo", "photoSha256", "photoTakenAt" };

    private static readonly Dictionary<string, Text> Lists = new(StringComparer.Ordinal)
    {
        ["alarms"] = StepTexts.Alarms,
        ["additions"] = StepTexts.Additions,
        ["observations"] = StepTexts.Observations,
        ["events"] = StepTexts.Events,
        ["actions"] = StepTexts.Actions,
        ["recommendations"] = StepTexts.Recommendations,
        ["samples"] = StepTexts.Bottles,
        ["photos"] = PhotoTexts.Picture,
    };

    /// <summary>Name and value of each field, and one line for each row of a list.</summary>
    /// <param name="state">The form.</param>
    /// <param name="top">Start of the keys: the visit or one system.</param>
    /// <returns>Lines, in the order of the keys.</returns>
    public static IReadOnlyList<(string Key, string Name, string Value)> Of(FormState state, string top) =>
    [
        .. state.Draft.Fields
            .Where(f => f.Value.Text.Trim().Length > 0 && f.Key.StartsWith(top + "/", StringComparison.Ordinal) && !Silent.Contains(f.Key[(f.Key.LastIndexOf('/') + 1)..]))
            .Where(f => state.Draft.Text(f.Key[..f.Key.LastIndexOf('/')] + "/" + "removed").Length == 0)
            .Where(f => !(f.Key.Contains("/probes/", StringComparison.Ordinal) && f.Key.EndsWith("/of", StringComparison.Ordinal)))
            .GroupBy(f => TitleOf(f.Key) is null ? f.Key : f.Key[..f.Key.LastIndexOf('/')])
            .Select(line => TitleOf(line.First().Key) is { } title
                ? (line.Key, state.T(title), string.Join(" · ", line.OrderBy(f => Place(f.Key)).Where(f => !SaysNothing(state, f.Key)).Select(f => Value(state, f.Key, f.Value))))
                : (line.Key, state.Name(line.Key), Value(state, line.Key, line.First().Value))),
    ];

    /// <summary>What was entered, readings before what is said of the visit as a whole, to know a draft again by.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Key, name and value; not what every visit begins with.</returns>
    public static IReadOnlyList<(string Key, string Name, string Value)> Entered(FormState state) =>
    [
        .. state.Plans.SelectMany(plan => Of(state, DraftKey.Of(DraftKey.Systems, plan.System.Code))
            .Select(line => (line.Key, state.Plans.Count > 1 ? $"{plan.System.Name}, {line.Name}" : line.Name, line.Value))),
        .. Of(state, DraftKey.Visit).Where(line => line.Key is not ("visit/arrived" or "visit/kind")),
    ];

    private static Text? TitleOf(string key) => DraftKey.Parts(key) switch
    {
        [DraftKey.Systems, _, var list, _, _] => Lists.GetValueOrDefault(list),
        [DraftKey.Visit, var list, _, _] => Lists.GetValueOrDefault(list),
        _ => null,
    };

    // What it is comes first, when last.
    private static int Place(string key) => key[(key.LastIndexOf('/') + 1)..] switch
    {
        "type" or "product" or "text" or "bottle" or "about" => 0,
        "at" or "takenAt" or "due" => 2,
        _ => 1,
    };

    // "Other" says nothing beside its note.
    private static bool SaysNothing(FormState state, string key) =>
        key.EndsWith("/type", StringComparison.Ordinal) && state.Draft.Text(key) == nameof(EventType.Other) && state.Draft.Text(key[..^"type".Length] + "note").Trim().Length > 0;

    private static string Value(FormState state, string key, DraftField field)
    {
        if (field.Unit is { } unit && state.Draft.Number(key) is { } number)
        {
            return state.Shows(number, unit, state.Reading(key).Qualifier);
        }

        if (Domain.Exchange.Moment.TryParse(field.Text, out var moment))
        {
            return Shown.DayAndTime(moment.Wall, state.Language);
        }

        return key[(key.LastIndexOf('/') + 1)..] switch
        {
            "found" or "left" when DraftKey.Parts(key) is [_, _, "settings", var setting, _] => SettingValues.In(setting, SettingValue.Of(field.Text), null, state.Language),
            "notTaken" when field.Text == SystemVisit.ResultPending => state.T(SummaryTexts.Pending),
            "kind" when Enum.TryParse<VisitKind>(field.Text, out var kind) => state.T(VisitTexts.NameOf(kind)),
            "found" or "left" when Enum.TryParse<SwitchPosition>(field.Text, out var position) => state.T(VisitTexts.NameOf(position)),
            "type" when Enum.TryParse<EventType>(field.Text, out var type) => state.T(VisitTexts.NameOf(type)),
            "severity" when Enum.TryParse<Domain.Findings.Severity>(field.Text, out var severity) => state.T(WordsOf.Soon(severity)),
            "technician" or "owner" when state.Firm.People.TryGetValue(field.Text, out var person) => person.Name,
            "state" when Enum.TryParse<ActionState>(field.Text, out var actionState) => state.T(WordsOf.State(actionState)),
            "about" or "to" when WordsOf.Places.Contains(field.Text) => state.T(WordsOf.Place(field.Text)),
            "due" or "replacedOn" when DateOnly.TryParseExact(field.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) => Shown.Day(day, state.Language),
            "takenAt" or "resultAt" or "receivedAt" or "at" or "arrived" or "left" or "handedAt" when state.Draft.ReadMoment(field.Text, null, null) is { } typed => Shown.DayAndTime(typed.Wall, state.Language),
            _ => field.Text switch
            {
                "yes" => state.T(EntryTexts.Yes),
                "no" => state.T(EntryTexts.No),
                _ => field.Text,
            },
        };
    }
}
