using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;

namespace LogBook.Entry.Closing;

/// <summary>
/// That the outputs were tested one by one: a tick of the person. In the record it is an event with these words, because the format
/// has no field for it; "device checked" would answer rules that ask for other devices.
/// </summary>
public static class OutputTest
{
    /// <summary>Name of the tick under its system, for whoever is led to it.</summary>
    public const string Field = "outputsTested";

    private const string Mark = "outputs";

    /// <summary>Whether a visit is to say it; the order of work of a usual visit and of a start, common practice, no source.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <param name="kind">Why the visit takes place.</param>
    /// <returns>True where the controller has outputs and the system is in use.</returns>
    public static bool IsDue(FormState state, SystemPlan plan, VisitKind kind) =>
        kind is VisitKind.Routine or VisitKind.StartUp && state.Draft.Amended is null && HasOutputs(plan) && state.Draft.Text(Key(plan, "inUse")) != "no";

    /// <summary>Whether a system has anything to test.</summary>
    /// <param name="plan">The system.</param>
    /// <returns>True with an output that is no alarm.</returns>
    public static bool HasOutputs(SystemPlan plan) => !plan.RecordOnly && plan.System.Outputs.Any(o => o.Drives != OutputDrives.Alarm);

    /// <summary>Whether it was said.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <returns>True when the tick is set.</returns>
    public static bool IsSaid(FormState state, SystemPlan plan) => TapEvent.IsSaid(state, plan, Mark);

    /// <summary>Says it, or takes it back.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    public static void Toggle(FormState state, SystemPlan plan) => TapEvent.Toggle(state, plan, Mark, state.T(EventWords.OutputsTested));

    private static string Key(SystemPlan plan, string field) => DraftKey.Of(DraftKey.Systems, plan.System.Code, field);
}
