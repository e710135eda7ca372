using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>Whether the outputs were tested, and how the switches are left. One that was found forced is asked about whatever the visit was for, also when work stopped.</summary>
internal static class SwitchPoints
{
    /// <summary>Whether a switch stands forced as far as the visit says: left so, or found so and nothing said of its end.</summary>
    public static bool IsAnyForced(FormState state) => state.Plans.Any(plan => plan.System.Outputs.Any(output =>
    {
        string At(string field) => state.Draft.Text(DraftKey.Of(DraftKey.Systems, plan.System.Code, "switches", output.Code, field));
        return (At("left") is { Length: > 0 } left ? left : At("found")) is nameof(SwitchPosition.ForcedOn) or nameof(SwitchPosition.ForcedOff);
    }));

    public static IEnumerable<OpenPoint> Of(FormState state, SystemPlan plan, int index, VisitKind kind)
    {
        string Key(string output, string field) => DraftKey.Of(DraftKey.Systems, plan.System.Code, "switches", output, field);
        var read = state.Build.Visit.Systems.FirstOrDefault(s => s.System == plan.System.Code)?.Switches ?? [];
        foreach (var position in read)
        {
            if (position.Left is { } left and not SwitchPosition.Automatic && string.IsNullOrEmpty(position.Reason))
            {
                yield return new OpenPoint("switch", state.T(StepTexts.OpenSwitch, position.Output, VisitTexts.NameOf(left)), Key(position.Output, "reason"), index, EntryStep.Adjust);
            }
        }

        // Nobody can tell afterwards how a switch was left.
        if (state.Draft.Amended is not null || plan.RecordOnly)
        {
            yield break;
        }

        if (OutputTest.IsDue(state, plan, kind) && !OutputTest.IsSaid(state, plan))
        {
            yield return new OpenPoint("outputs-tested", state.T(StepTexts.OpenOutputsTested), DraftKey.Of(DraftKey.Systems, plan.System.Code, OutputTest.Field), index, EntryStep.Adjust, OfEachVisit: true);
        }

        var all = VisitShape.ReadsEverything(kind) && state.Draft.Text(DraftKey.Of(DraftKey.Systems, plan.System.Code, "inUse")) != "no";
        foreach (var output in plan.System.Outputs.Where(o => o.Drives != OutputDrives.Alarm))
        {
            var position = read.FirstOrDefault(s => s.Output == output.Code);
            var isForced = position?.Found is SwitchPosition.ForcedOn or SwitchPosition.ForcedOff;
            if (position?.Left is null && (all || isForced))
            {
                // One that was found forced stands for itself, whatever else is open.
                yield return new OpenPoint("switch-unknown", state.T(StepTexts.OpenSwitchUnknown, output.Code), Key(output.Code, "left"), index, EntryStep.Adjust, OfEachVisit: !isForced);
            }
        }
    }
}
