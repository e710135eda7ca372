using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;

namespace LogBook.Entry.Closing;

/// <summary>What a person says of a system by one tap and the format has no field for: an event "other" with these words.</summary>
internal static class TapEvent
{
    private const string Mark = "tests";

    /// <summary>Whether it was said.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <param name="mark">What tells it from the others.</param>
    /// <returns>True when the tap stands.</returns>
    public static bool IsSaid(FormState state, SystemPlan plan, string mark) => Row(state, plan, mark) is not null;

    /// <summary>Says it, or takes it back.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <param name="mark">What tells it from the others.</param>
    /// <param name="words">Words of the event.</param>
    public static void Toggle(FormState state, SystemPlan plan, string mark, string words)
    {
        if (Row(state, plan, mark) is { } said)
        {
            state.RemoveRow(said);
            return;
        }

        var row = state.Draft.AddRow(Events(plan));
        state.Draft.SetText(DraftKey.Under(row, Mark), mark);
        state.Draft.SetText(DraftKey.Under(row, "type"), nameof(EventType.Other));
        state.Draft.SetText(DraftKey.Under(row, "note"), words);
        state.SetText(DraftKey.Under(row, "at"), SiteTime.At(state.Clock.GetUtcNow(), SiteTime.Zone(state.Draft.TimeZone)).Text);
    }

    private static string? Row(FormState state, SystemPlan plan, string mark) =>
        state.Draft.Rows(Events(plan)).FirstOrDefault(row => state.Draft.Text(DraftKey.Under(row, Mark)) == mark);

    private static string Events(SystemPlan plan) => DraftKey.Of(DraftKey.Systems, plan.System.Code, "events");
}
