using LogBook.Entry.Drafts;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>What stays open and why: a reason of its own for a group, and one for all the rest.</summary>
public static class LeftOpen
{
    /// <summary>Field of the reason for all that has none of its own.</summary>
    public const string ReasonKey = "visit/leaveOpen";

    /// <summary>What is open and has no reason of its own.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Points, in the order of the form.</returns>
    public static IReadOnlyList<OpenPoint> WithoutOwnReason(FormState state)
    {
        var reasoned = OpenGroup.Of(state, state.Open).Where(g => g.Reason(state).Length > 0).SelectMany(g => g.Points).ToHashSet();
        return [.. state.Open.Where(p => !reasoned.Contains(p))];
    }

    /// <summary>Name of a point's system, where the site has several.</summary>
    /// <param name="state">The form.</param>
    /// <param name="point">The point.</param>
    /// <returns>The name; null for what concerns the visit as a whole.</returns>
    public static string? SystemOf(FormState state, OpenPoint point) =>
        state.Plans.Count > 1 && point.System < state.Plans.Count && point.Key.StartsWith(DraftKey.Systems, StringComparison.Ordinal) ? state.Plans[point.System].System.Name : null;

    /// <summary>What the record tells of it.</summary>
    /// <param name="state">The form.</param>
    /// <returns>A line for each reason, groups by their number: the record itself shows what was not read.</returns>
    public static IReadOnlyList<string> Notes(FormState state)
    {
        var groups = OpenGroup.Of(state, state.Open);
        List<string> notes = [.. groups.Where(g => g.Reason(state).Length > 0).Select(g => state.T(EntryTexts.LeftOpenNote, Named(state, g.Points[0], g.Words(state)), g.Reason(state)))];
        var grouped = groups.SelectMany(g => g.Points).ToHashSet();
        List<string> rest =
        [
            .. state.Open.Where(p => !grouped.Contains(p)).Select(p => Named(state, p, p.Words)),
            .. groups.Where(g => g.Reason(state).Length == 0).Select(g => Named(state, g.Points[0], g.Words(state))),
        ];
        if (rest.Count > 0)
        {
            notes.Add(state.T(EntryTexts.LeftOpenNote, string.Join("; ", rest), state.Draft.Text(ReasonKey).Trim()));
        }

        return notes;
    }

    private static string Named(FormState state, OpenPoint point, string words) => SystemOf(state, point) is { } system ? $"{system}, {words}" : words;
}
