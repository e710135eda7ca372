using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Simulation;

namespace LogBook.Application.Calculators;

/// <summary>A programme run ahead.</summary>
/// <param name="Programme">The programme that was run.</param>
/// <param name="Result">What happened; null where something is missing.</param>
/// <param name="Faults">What is wrong with it.</param>
/// <param name="Missing">What is missing to run it.</param>
public sealed record AheadRun(Programme Programme, LookAheadResult? Result, IReadOnlyList<LookAheadFault> Faults, IReadOnlyList<Issue> Missing)
{
    /// <summary>Runs the programme of a view ahead, as it is or with a change.</summary>
    /// <param name="view">The system with its programme.</param>
    /// <param name="change">What if; null for the programme as it is.</param>
    /// <param name="weeks">Weeks, 1 to 52.</param>
    /// <returns>The run; null where no programme is in force.</returns>
    public static AheadRun? Of(DosePlanView view, LookAheadChange? change = null, int weeks = 4)
    {
        if (view.Start.Programme is not { } programme)
        {
            return null;
        }

        // The make-up as it was last measured, where the programme does not say it.
        var asked = programme.MakeUp?.ConductivityUsPerCm is > 0 || view.Start.MakeUp is not { } makeUp
            ? programme
            : programme with { MakeUp = (programme.MakeUp ?? new MakeUpWater()) with { ConductivityUsPerCm = makeUp.Estimate.Value } };
        var run = change is null ? asked : change.On(asked, view.Start.System);
        var (result, missing) = LookAhead.Run(view.Firm, view.Site, view.Start.System, run, view.From, weeks);
        var pumps = view.Start.Feeds.Where(feed => feed.PumpForLabelLPerH is not null).DistinctBy(feed => feed.Output, StringComparer.OrdinalIgnoreCase)
            .ToDictionary(feed => feed.Output, feed => feed.PumpForLabelLPerH!, StringComparer.OrdinalIgnoreCase);
        return new AheadRun(run, result, result is null ? [] : LookAheadFaults.Of(result, view.Firm, view.Site, view.Start.System, run, view.Today, pumps), missing);
    }
}
