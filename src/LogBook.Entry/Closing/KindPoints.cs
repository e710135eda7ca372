using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>What a special visit is expected to tell: what was delivered, that the plant was started, stopped or cleaned.</summary>
internal static class KindPoints
{
    public static IEnumerable<OpenPoint> Of(FormState state, SystemPlan plan, int index, VisitKind kind)
    {
        if (plan.RecordOnly)
        {
            yield break;
        }

        var system = state.Build.Visit.Systems.FirstOrDefault(s => s.System == plan.System.Code);
        var events = DraftKey.Of(DraftKey.Systems, plan.System.Code, "events");
        foreach (var wanted in VisitShape.Events(kind).Where(w => system?.Events.Any(e => w.Contains(e.Type)) != true))
        {
            yield return new OpenPoint("event", state.T(StepTexts.OpenEvent, string.Join(" / ", wanted.Select(w => state.T(VisitTexts.NameOf(w))))), events, index, EntryStep.Tower);
        }

        // One of the site's systems is enough: nobody delivers to all of them each time.
        var delivered = state.Build.Visit.Systems.Any(s => s.Additions.Count > 0 || s.Drums.Any(d => d.AddedL > 0 || d.SpareL > 0 || d.Swapped == true));
        if (kind == VisitKind.Delivery && index == 0 && !delivered && plan.System.Drums.Count > 0)
        {
            yield return new OpenPoint("delivery", state.T(StepTexts.OpenDelivery), DraftKey.Of(DraftKey.Systems, plan.System.Code, "drums", plan.System.Drums[0].Code, "addedL"), index, EntryStep.Stock);
        }
    }
}
