using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>Actions of this visit that nobody owns or that have no day: nothing would ever call them in.</summary>
internal static class ActionPoints
{
    public static IEnumerable<OpenPoint> Of(FormState state, SystemPlan plan, int index)
    {
        var stood = state.Draft.Amended?.Systems.Where(s => s.System == plan.System.Code).SelectMany(s => s.Actions).Select(a => a.Id).ToHashSet() ?? [];
        foreach (var row in state.Draft.Rows(DraftKey.Of(DraftKey.Systems, plan.System.Code, "actions")))
        {
            string Text(string field) => state.Draft.Text(DraftKey.Under(row, field)).Trim();
            if (Text("text").Length == 0 || Text("state") is nameof(ActionState.Done) or nameof(ActionState.Dropped) || (Guid.TryParse(Text("id"), out var id) && stood.Contains(id)))
            {
                continue;
            }

            foreach (var field in new[] { "owner", "due" }.Where(field => Text(field).Length == 0))
            {
                yield return new OpenPoint("action-" + field, state.T(field == "owner" ? StepTexts.OpenOwner : StepTexts.OpenDue, Text("text")), DraftKey.Under(row, field), index, EntryStep.Close);
            }
        }
    }
}
