using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.State;

namespace LogBook.Entry.Timers;

/// <summary>The times that run in a draft. Their start is a text of the draft, so they outlive the page and the tablet's battery.</summary>
public static class RunningTimers
{
    /// <summary>What runs.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Settling first, in the order of the systems.</returns>
    public static IReadOnlyList<RunningTimer> Of(FormState state) => [.. Settling(state), .. Incubation(state)];

    private static IEnumerable<RunningTimer> Settling(FormState state)
    {
        foreach (var plan in state.Plans)
        {
            // The threshold of the findings, as the firm or the system has it: a reading taken sooner would not count there.
            var shortest = TimeSpan.FromMinutes(state.Firm.Engine.For(state.Site.Code, plan.System.Code).Thresholds.SettledMinutes.Value);
            foreach (var probe in plan.System.Probes)
            {
                // Once read, it has been stopped: the minutes stand in their box.
                var key = DraftKey.Of(DraftKey.Systems, plan.System.Code, "probes", probe.Code);
                if (state.Draft.Text(DraftKey.Under(key, "settledMin")).Length == 0 && Moment.TryParse(state.Draft.Text(DraftKey.Under(key, "settleStart")), out var start))
                {
                    yield return new RunningTimer(DraftKey.Under(key, "settledMin"), Named(state, plan.System.Code, probe.Code), TimerKind.Settling, start.Utc, shortest);
                }
            }
        }
    }

    private static IEnumerable<RunningTimer> Incubation(FormState state)
    {
        foreach (var plan in state.Plans)
        {
            foreach (var test in plan.SampleTests)
            {
                var group = test.Key.In(plan.System.Code);
                if (state.Draft.Text(DraftKey.Under(group, "notTaken")) == SystemVisit.ResultPending
                    && state.Draft.ReadMoment(state.Draft.Text(DraftKey.Under(group, "takenAt")), null, null) is { } taken)
                {
                    var hours = state.Draft.Number(DraftKey.Under(group, "incubationHours"));
                    yield return new RunningTimer(
                        DraftKey.Under(group, "value"),
                        Named(state, plan.System.Code, FieldNames.OfTest(test.Key, state.Firm).In(state.Language)),
                        TimerKind.Incubation,
                        taken.Utc,
                        hours is > 0 and <= Longest ? TimeSpan.FromHours(hours.Value) : null);
                }
            }
        }
    }

    // A year: nothing is incubated for longer, and a slipped digit must not overflow.
    private const double Longest = 24 * 366;

    private static string Named(FormState state, string system, string what) => state.Plans.Count > 1 ? $"{system} {what}" : what;
}
