using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;

namespace LogBook.Entry.Plans;

/// <summary>How far a step is: the fields it waits for.</summary>
public static class StepProgress
{
    /// <summary>Fields a step waits for.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <param name="step">The step.</param>
    /// <returns>Fields; none for a step in which everything is as it comes.</returns>
    public static IReadOnlyList<ExpectedField> Expected(FormState state, SystemPlan plan, EntryStep step)
    {
        var draft = state.Draft;
        var top = DraftKey.Of(DraftKey.Systems, plan.System.Code);
        ExpectedField Field(bool asked, params string[] parts)
        {
            var key = DraftKey.Under(top, parts);
            return new ExpectedField(key, draft.Text(key).Length > 0, asked);
        }

        var switched = plan.System.Outputs.Where(o => o.Drives != OutputDrives.Alarm).Select(o => o.Code).ToList();
        return step switch
        {
            EntryStep.Arrive => [new ExpectedField("visit/kind", draft.Text("visit/kind").Length > 0), Field(false, "running")],
            EntryStep.Controller =>
            [
                .. plan.System.Probes.Select(p => Field(true, "probes", p.Code, "asFound")),
                .. switched.Select(o => Field(true, "switches", o, "found")),
                .. switched.Count + plan.System.Probes.Count > 0 ? [Field(true, "clockOffByMin")] : Array.Empty<ExpectedField>(),
                .. switched.Select(o => Field(true, "hoursRun", o, "hours")),
                .. plan.Settings.Where(s => s.EachVisit).Select(s => Field(true, "settings", s.Name, "found")),
                .. Walk(state, plan),
            ],
            EntryStep.Reference => [.. plan.System.Probes.Select(p => Field(p.Of == ProbeKind.Conductivity, "probes", p.Code, "reference"))],
            EntryStep.Water or EntryStep.Sheet =>
            [
                .. plan.Tests.Where(t => t.Range is not null || (t.Key.At == SamplePoints.MakeUp && t.Key.Test == TestCodes.Conductivity))
                    .Select(t => new ExpectedField(DraftKey.Under(t.Key.In(plan.System.Code), t.FirstField), IsSaid(draft, t.Key.In(plan.System.Code)), true, true)),
                .. step == EntryStep.Sheet ? plan.System.Meters.Select(m => Field(true, "meters", m.Code, "dial")) : [],
            ],
            EntryStep.Stock =>
            [
                .. plan.System.Meters.Select(m => Field(true, "meters", m.Code, "dial")),
                .. plan.System.Meters.Select(m => Field(plan.HasTotal(m), "meters", m.Code, "total")),
                .. plan.System.Drums.Select(d => Field(true, "drums", d.Code, "level")),
                .. plan.WalkIsDue ? plan.System.Pumps.SelectMany(p => plan.KnobsOf(p).Select(knob => Field(true, "pumps", p.Code, knob))) : [],
            ],
            EntryStep.Adjust => [.. switched.Select(o => Field(false, "switches", o, "left"))],
            EntryStep.Close => Signatures(draft),
            _ => [],
        };
    }

    /// <summary>Settings beyond those of each visit, as long as the full walk through them is due. They are asked about together, not one by one.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <returns>Fields; none while no walk is due.</returns>
    public static IReadOnlyList<ExpectedField> Walk(FormState state, SystemPlan plan) => !plan.WalkIsDue ? [] :
    [
        .. plan.Settings.Where(s => !s.EachVisit).Select(s => DraftKey.Of(DraftKey.Systems, plan.System.Code, "settings", s.Name, "found"))
            .Select(key => new ExpectedField(key, state.Draft.Text(key).Length > 0)),
    ];

    private static ExpectedField[] Signatures(VisitDraft draft) => draft.Amended is not null
        ? [new ExpectedField("visit/amendReason", draft.Text("visit/amendReason").Length > 0)]
        :
        [
            new ExpectedField("visit/signatures/Technician/name", draft.Text("visit/signatures/Technician/name").Length > 0),
            new ExpectedField("visit/signatures/Customer/name", draft.Text("visit/signatures/Customer/name").Length + draft.Text("visit/signatures/Customer/absentReason").Length > 0),
        ];

    private static bool IsSaid(VisitDraft draft, string group) => draft.Text(DraftKey.Under(group, "mode")) switch
    {
        "notQuantifiable" => true,
        "notTaken" => draft.Text(DraftKey.Under(group, "notTaken")).Length > 0,
        "drops" => draft.Text(DraftKey.Under(group, "drops")).Length > 0,
        "" or "number" or "comparator" => draft.Text(DraftKey.Under(group, "value")).Length > 0,
        _ => false,
    };
}
