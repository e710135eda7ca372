using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;

namespace LogBook.Entry.Since;

/// <summary>Actions that earlier visits left open, and what this visit says of them.</summary>
public static class OpenActions
{
    /// <summary>Open actions of the system in hand, however long ago they were asked for; the latest word on each counts.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Actions.</returns>
    public static IReadOnlyList<VisitAction> Of(FormState state) => state.Plan is not { } plan ? [] :
    [
        .. state.Standing
            .Where(s => s.Site.Equals(state.Site.Code, StringComparison.OrdinalIgnoreCase) && s.System.Equals(plan.System.Code, StringComparison.OrdinalIgnoreCase))
            .Where(s => s.Since < state.Draft.Arrived().Utc)
            .Select(s => s.Action)
            .Concat(plan.Visits.SelectMany(v => v.System.Actions))
            .GroupBy(a => a.Id?.ToString() ?? a.Text, StringComparer.Ordinal)
            .Select(group => group.Last())
            .Where(a => a.State is null or ActionState.Open),
    ];

    /// <summary>What this visit says of an action.</summary>
    /// <param name="state">The form.</param>
    /// <param name="action">The action.</param>
    /// <returns>Its new state, or null while nothing was said.</returns>
    public static ActionState? Said(FormState state, VisitAction action) =>
        Row(state, action) is { } row && Enum.TryParse<ActionState>(state.Draft.Text(DraftKey.Under(row, "state")), out var said) ? said : null;

    /// <summary>Says what became of an action; the same again takes it back.</summary>
    /// <param name="state">The form.</param>
    /// <param name="action">The action.</param>
    /// <param name="became">What became of it.</param>
    public static void Say(FormState state, VisitAction action, ActionState became)
    {
        if (Row(state, action) is { } row)
        {
            if (Said(state, action) == became)
            {
                state.RemoveRow(row);
                return;
            }
        }
        else
        {
            row = state.Draft.AddRow(state.Key("actions"));
            void Set(string name, string? text) => state.Draft.SetText(DraftKey.Under(row, name), text);
            Set("id", action.Id?.ToString("D"));
            Set("for", action.For);
            Set("text", action.Text);
            Set("owner", action.Owner);
            Set("due", action.Due?.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        }

        state.SetText(DraftKey.Under(row, "state"), became.ToString());
    }

    private static string? Row(FormState state, VisitAction action) => state.Draft.Rows(state.Key("actions")).FirstOrDefault(row => action.Id is { } id
        ? state.Draft.Text(DraftKey.Under(row, "id")) == id.ToString("D")
        : state.Draft.Text(DraftKey.Under(row, "state")).Length > 0 && state.Draft.Text(DraftKey.Under(row, "text")) == action.Text);
}
