using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>The same observation on two visits running, with no action on it closed in between.</summary>
/// <remarks>
/// Technicians also write down what is as it should be, in the same words each time. Where nobody said that it wants planning, the
/// second time is first evidence and the third decides.
/// </remarks>
public sealed class SeenAgain : IFindingRule
{
    private static readonly Text Says = new(
        "\"{1}\" at {0} was seen again; nothing has been done about it on record.",
        "Se vio otra vez \"{1}\" en {0}; no consta que se haya hecho nada.",
        "\"{1}\" em {0} foi visto de novo; não consta que algo tenha sido feito.");

    private static readonly Text Times = new("visits on which it was seen", "visitas en que se vio", "visitas em que foi visto");

    private static readonly Said[] Next =
    [
        Looks.Say("Agree who does what until when, and write it down as an action.", "Acuerde quién hace qué y hasta cuándo, y anótelo como acción.", "Combine quem faz o quê e até quando, e anote como ação."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.SeenAgain;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Visit.Visit.Kind is VisitKind.Delivery or VisitKind.Result or VisitKind.Stopped)
        {
            yield break;
        }

        // One finding for all that was seen again: the exchange format names no subject for a part of the tower.
        var again = visit.Record.Observations
            .Select(observation => (Observation: observation, Visits: Count(visit, observation)))
            .Where(seen => seen.Visits >= 2 && !visit.Record.Actions.Any(action => action.State == ActionState.Done && Concerns(action, seen.Observation)))
            .OrderByDescending(seen => SeverityOf(seen.Observation, seen.Visits)).ThenByDescending(seen => seen.Visits).ThenBy(seen => Key(seen.Observation.About), StringComparer.Ordinal)
            .ToList();
        if (again.Count == 0)
        {
            yield return Verdict.Clear();
            yield break;
        }

        var (first, times) = again[0];
        yield return Verdict.Found(null, new Indication(SeverityOf(first, times), new Said(Says, first.About, first.Text))
        {
            Evidence = [new EvidenceFigure(Times, times, "1", LimitHigh: 2)],
            LookAtNext = Next,
        });
    }

    private static Severity SeverityOf(Observation observation, int times) => times >= (observation.Severity >= Severity.Plan ? 2 : 3) ? Severity.Plan : Severity.Watch;

    private static int Count(VisitFacts visit, Observation observation)
    {
        var count = 0;
        foreach (var at in visit.Back().Where(v => v.Visit.Visit.Kind is not (VisitKind.Delivery or VisitKind.Result or VisitKind.Stopped)))
        {
            // After an action was closed, what is seen is seen anew.
            if (!at.Record.Observations.Any(other => Same(other, observation))
                || (at != visit && at.Record.Actions.Any(action => action.State == ActionState.Done && Concerns(action, observation))))
            {
                break;
            }

            count++;
        }

        return count;
    }

    private static bool Same(Observation a, Observation b) => Key(a.About) == Key(b.About) && Key(a.Text) == Key(b.Text);

    private static bool Concerns(VisitAction action, Observation observation) => Key(action.For) == Key(observation.About);

    private static string Key(string? text) => string.Join(' ', (text ?? "").Split(' ', StringSplitOptions.RemoveEmptyEntries)).ToUpperInvariant();
}
