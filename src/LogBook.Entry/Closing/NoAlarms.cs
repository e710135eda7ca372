using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;

namespace LogBook.Entry.Closing;

/// <summary>
/// That the controller shows no alarm: a tap of the person. A visit without alarms does not tell whether somebody looked; in the
/// record it is an event with these words, because the format has no field for it.
/// </summary>
public static class NoAlarms
{
    private const string Mark = "no-alarms";

    /// <summary>Whether it may be said.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <returns>False once an alarm is entered, and in an amendment, which was not written at the controller.</returns>
    public static bool MayBeSaid(FormState state, SystemPlan plan) =>
        state.Draft.Amended is null && !state.Draft.Rows(DraftKey.Of(DraftKey.Systems, plan.System.Code, "alarms")).Any();

    /// <summary>Whether it was said.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    /// <returns>True when the tap stands.</returns>
    public static bool IsSaid(FormState state, SystemPlan plan) => TapEvent.IsSaid(state, plan, Mark);

    /// <summary>Says it, or takes it back.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">The system.</param>
    public static void Toggle(FormState state, SystemPlan plan) => TapEvent.Toggle(state, plan, Mark, state.T(EventWords.NoAlarms));
}
