using System.Globalization;
using LogBook.Domain.Exchange;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Plans;
using LogBook.Entry.State;
using LogBook.Entry.Texts;

namespace LogBook.Entry.Closing;

/// <summary>What is asked before a visit is closed, and the visit that is handed over.</summary>
public static class CloseGate
{
    private const string Enter = "visit/enteredAt";
    private const string Left = "visit/left";

    /// <summary>Results outside their ranges, and counts that reach a limit of the rule in force or of the firm.</summary>
    /// <param name="state">The form.</param>
    /// <param name="plan">One system.</param>
    /// <returns>Results, in their order; of a test that was read again the last one counts.</returns>
    public static IReadOnlyList<OutsideRange> Outside(FormState state, SystemPlan plan) =>
    [
        .. (state.Build.Visit.Systems.FirstOrDefault(s => s.System == plan.System.Code)?.Readings ?? [])
            .Where(r => r.Source != ReadingSource.Controller).GroupBy(r => (r.At, r.Test)).Select(g => OutsideRange.Of(state, plan, g.Last(), state.Build.Visit)).OfType<OutsideRange>(),
    ];

    /// <summary>Everything that is open.</summary>
    /// <param name="state">The form.</param>
    /// <returns>Points in the order of the form.</returns>
    public static IReadOnlyList<OpenPoint> Open(FormState state)
    {
        var points = new List<OpenPoint>();
        var kind = state.Build.Visit.Kind ?? VisitKind.Routine;
        if (state.IsStopped && state.Draft.Text("visit/reason").Trim().Length == 0)
        {
            points.Add(new OpenPoint("reason", state.T(EntryTexts.WhyStopped), "visit/reason", state.SystemIndex, EntryStep.Arrive));
        }

        for (var i = 0; i < state.Plans.Count; i++)
        {
            points.AddRange(SwitchPoints.Of(state, state.Plans[i], i, kind));
            if (kind is not VisitKind.Stopped)
            {
                points.AddRange(OfSystem(state, state.Plans[i], i, kind));
            }
        }

        points.AddRange(UnfinishedPoints.Of(state));
        if (state.Draft.Amended is not null)
        {
            if (state.Draft.Text("visit/amendReason").Trim().Length == 0)
            {
                points.Add(new OpenPoint("amend-reason", state.T(EntryTexts.WhyAmended), "visit/amendReason", state.SystemIndex, EntryStep.Close));
            }

            return points;
        }

        var signatures = state.Build.Visit.Signatures;
        if (!signatures.Any(s => s.By == SignedBy.Technician && (s.Name ?? s.AbsentReason) is not null))
        {
            points.Add(new OpenPoint("technician-signature", state.T(StepTexts.OpenTechnician), "visit/signatures/Technician/name", state.SystemIndex, EntryStep.Close));
        }

        if (kind is not VisitKind.Result && !signatures.Any(s => s.By == SignedBy.Customer && (s.Name ?? s.AbsentReason) is not null))
        {
            points.Add(new OpenPoint("customer-signature", state.T(StepTexts.OpenCustomer), "visit/signatures/Customer/name", state.SystemIndex, EntryStep.Close));
        }

        return points;
    }

    /// <summary>Whether the visit may be handed over.</summary>
    /// <param name="state">The form.</param>
    /// <returns>True when no field must be corrected and nothing is open without a reason; an amendment always needs its reason.</returns>
    public static bool MayClose(FormState state)
    {
        if (state.Problems.Any(p => p.Blocks && !p.CameBack))
        {
            return false;
        }

        var open = LeftOpen.WithoutOwnReason(state);
        return open.Count == 0 || (state.Draft.Text(LeftOpen.ReasonKey).Trim().Length > 0 && open.All(p => p.Code != "amend-reason"));
    }

    /// <summary>Makes the visit that is handed over.</summary>
    /// <param name="state">The form.</param>
    /// <returns>The visit.</returns>
    /// <remarks>
    /// The time of closing is set once and kept in the draft: sending the same visit again after a lost answer must be the
    /// same document, else the receiver would see a conflict.
    /// </remarks>
    public static Visit Finish(FormState state)
    {
        var draft = state.Draft;
        var now = SiteTime.At(state.Clock.GetUtcNow(), SiteTime.Zone(draft.TimeZone));
        if (draft.Text(Enter).Length == 0)
        {
            draft.SetText(Enter, now.Text);
        }

        // A clock that was set back under the visit does not know when it ended: better no time than one before the arrival.
        var knowsTheEnd = now.Utc >= state.Build.Visit.Arrived.Utc;
        if (draft.Text(Left).Length == 0 && draft.Amended is null && knowsTheEnd)
        {
            draft.SetText(Left, now.Text);
        }

        state.Renew();
        _ = Moment.TryParse(draft.Text(Enter), out var entered);
        var visit = state.Build.Visit;
        if (LeftOpen.Notes(state) is { Count: > 0 } left)
        {
            visit = visit with { Notes = string.Join('\n', visit.Notes is { } notes ? [notes, .. left] : left) };
        }

        if (draft.Amended is not { } amended)
        {
            return visit with { EnteredAt = entered };
        }

        var version = amended.Version ?? 1;
        return visit with
        {
            Version = version + 1,
            Amends = version,
            AmendedBy = state.Me.Length > 0 ? state.Me : draft.Technician,
            AmendedAt = entered.Utc < visit.Arrived.Utc ? visit.Arrived : entered,
            Reason = draft.Text("visit/amendReason").Trim(),
        };
    }

    private static IEnumerable<OpenPoint> OfSystem(FormState state, SystemPlan plan, int index, VisitKind kind)
    {
        var system = state.Build.Visit.Systems.FirstOrDefault(s => s.System == plan.System.Code);
        string Key(params string[] parts) => DraftKey.Under(DraftKey.Of(DraftKey.Systems, plan.System.Code), parts);
        foreach (var outside in Outside(state, plan))
        {
            var acted = system!.Actions.Any(a => a.For == outside.About && a.State is null or ActionState.Open) || state.Draft.Text(Key("ranges", outside.About, "reason")).Trim().Length > 0;
            if (!acted)
            {
                yield return new OpenPoint("range", state.T(StepTexts.OpenRange, outside.Name(state)), Key("ranges", outside.About, "reason"), index, EntryStep.Close);
            }
        }

        foreach (var point in ActionPoints.Of(state, plan, index))
        {
            yield return point;
        }

        foreach (var setting in system?.Settings ?? [])
        {
            if (setting.Left is { } left && setting.Found is { } found && left != found && string.IsNullOrEmpty(setting.Reason))
            {
                yield return new OpenPoint("setting", state.T(StepTexts.OpenSetting, VisitTexts.NameOfSetting(setting.Name)), Key("settings", setting.Name, "reason"), index, EntryStep.Adjust);
            }
        }

        if (state.Draft.Amended is not null)
        {
            yield break;
        }

        foreach (var point in KindPoints.Of(state, plan, index, kind))
        {
            yield return point;
        }

        if (!VisitShape.ReadsEverything(kind) || state.Draft.Text(Key("inUse")) == "no")
        {
            yield break;
        }

        foreach (var step in plan.Steps.Where(s => s is EntryStep.Controller or EntryStep.Reference or EntryStep.Water or EntryStep.Stock or EntryStep.Sheet))
        {
            foreach (var expected in StepProgress.Expected(state, plan, step).Where(e => e.Asked && !e.Done))
            {
                yield return new OpenPoint("not-read", NotRead(state, expected), expected.Key, index, step, OfEachVisit: true);
            }
        }

        if (StepProgress.Walk(state, plan).Where(e => !e.Done).ToList() is { Count: > 0 } walk)
        {
            yield return new OpenPoint("walk", state.T(StepTexts.OpenWalk, walk.Count.ToString(CultureInfo.InvariantCulture)), walk[0].Key, index, EntryStep.Controller, OfEachVisit: true);
        }
    }

    private static string NotRead(FormState state, ExpectedField expected) => DraftKey.Parts(expected.Key) is [_, _, "switches", var output, _]
        ? state.T(StepTexts.OpenSwitchFound, output)
        : state.T(expected.IsTest ? StepTexts.OpenTest : StepTexts.OpenCounter, state.Name(expected.Key));
}
