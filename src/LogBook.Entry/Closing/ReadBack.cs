using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>Everything entered, as it was understood, to be read once more before closing.</summary>
public static class ReadBack
{
    private static readonly HashSet<string> Silent = new(StringComparer.Ordinal) { "row", "id", "removed", "follows", "settleStart", "mode", "enteredAt", "kindBefore", "tests", "photo", "photoSha256", "photoTakenAt" };

    /// <summary>Name and value of each field.</summary>
    /// <param name="state">The form.</param>
    /// <param name="top">Start of the keys: the visit or one system.</param>
    /// <returns>Pairs, in the order of the keys.</returns>
    public static IReadOnlyList<(string Key, string Name, string Value)> Of(FormState state, string top) =>
    [
        .. state.Draft.Fields
            .Where(f => f.Value.Text.Trim().Length > 0 && f.Key.StartsWith(top + "/", StringComparison.Ordinal) && !Silent.Contains(f.Key[(f.Key.LastIndexOf('/') + 1)..]))
            .Where(f => state.Draft.Text(f.Key[..f.Key.LastIndexOf('/')] + "/" + "removed").Length == 0)
            .Where(f => !(f.Key.Contains("/probes/", StringComparison.Ordinal) && f.Key.EndsWith("/of", StringComparison.Ordinal)))
            .Select(f => (f.Key, state.Name(f.Key), Value(state, f.Key, f.Value))),
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

    private static string Value(FormState state, string key, DraftField field)
    {
        if (field.Unit is { } unit && state.Draft.Number(key) is { } number)
        {
            return state.Shows(number, unit, state.Reading(key).Qualifier);
        }

        if (Domain.Exchange.Moment.TryParse(field.Text, out var moment))
        {
            return SiteTime.Write(moment).Replace('T', ' ');
        }

        return key[(key.LastIndexOf('/') + 1)..] switch
        {
            "kind" when Enum.TryParse<VisitKind>(field.Text, out var kind) => state.T(VisitTexts.NameOf(kind)),
            "found" or "left" when Enum.TryParse<SwitchPosition>(field.Text, out var position) => state.T(VisitTexts.NameOf(position)),
            "type" when Enum.TryParse<EventType>(field.Text, out var type) => state.T(VisitTexts.NameOf(type)),
            "severity" when Enum.TryParse<Domain.Findings.Severity>(field.Text, out var severity) => state.T(WordsOf.Soon(severity)),
            "technician" or "owner" when state.Firm.People.TryGetValue(field.Text, out var person) => person.Name,
            "state" when Enum.TryParse<ActionState>(field.Text, out var actionState) => state.T(WordsOf.State(actionState)),
            "about" or "to" when WordsOf.Places.Contains(field.Text) => state.T(WordsOf.Place(field.Text)),
            "takenAt" or "resultAt" or "receivedAt" or "at" or "arrived" or "left" => field.Text.Replace('T', ' '),
            _ => field.Text switch
            {
                "yes" => state.T(EntryTexts.Yes),
                "no" => state.T(EntryTexts.No),
                _ => field.Text,
            },
        };
    }
}
