using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Cycles off the programme's target by the best agreeing routes.</summary>
public abstract class CyclesOffTarget : IFindingRule
{
    private static readonly Text Says = new(
        "Cycles are {0} against a target of {1}: {2} off (limit {3}, {4}).",
        "Los ciclos son {0} frente a un objetivo de {1}: {2} de diferencia (límite {3}, {4}).",
        "Os ciclos são {0} contra um alvo de {1}: {2} de diferença (limite {3}, {4}).");

    private static readonly Text Deviation = new("cycles against target", "ciclos frente al objetivo", "ciclos contra o alvo");
    private static readonly Text Cycles = new("cycles by the best agreeing routes", "ciclos por las vías que mejor concuerdan", "ciclos pelas vias que melhor concordam");

    private protected CyclesOffTarget()
    {
    }

    /// <inheritdoc />
    public abstract string Kind { get; }

    /// <summary>1 for too high, −1 for too low.</summary>
    private protected abstract int Side { get; }

    /// <summary>Causes, likeliest first.</summary>
    private protected abstract IReadOnlyList<(string Cause, Said Words)> Causes { get; }

    /// <summary>What to look at next.</summary>
    private protected abstract IReadOnlyList<Said> Next { get; }

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Programme?.TargetCycles is null)
        {
            yield break;
        }

        if (visit.Unsettled is { } reason)
        {
            yield return Verdict.NotJudged(null, reason);
        }
        else if (Settling.DoseGovernsBleed(visit))
        {
            yield return Verdict.NotJudged(null, VisitReasons.DoseGovernsBleed);
        }
        else if (!visit.Cycles.Best.HasValue)
        {
            yield return Verdict.NotJudged(null, visit.Cycles.Best.Reasons[0]);
        }
        else
        {
            yield return IsOff(visit, thresholds) == true ? Verdict.Found(null, Shown(visit, thresholds)) : Verdict.Clear();
        }
    }

    private static Estimate DeviationOf(VisitFacts visit) =>
        visit.Cycles.Best.Value.Scaled(1 / visit.Programme!.TargetCycles!.Value).Minus(Estimate.Exact(1)).Scaled(100, "%");

    private bool? IsOff(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Programme?.TargetCycles is null || visit.Unsettled is not null || Settling.DoseGovernsBleed(visit) || !visit.Cycles.Best.HasValue)
        {
            return null;
        }

        var deviation = DeviationOf(visit);
        return Side * deviation.Value > thresholds.CyclesPercent.Value && Math.Abs(deviation.Value) > deviation.ExpandedUncertainty;
    }

    private Indication Shown(VisitFacts visit, FindingThresholds thresholds)
    {
        var deviation = DeviationOf(visit);
        var limit = thresholds.CyclesPercent;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier => Confirm.RestOnOneMakeUp(earlier, visit, TestCodes.Conductivity, TestCodes.Chloride, TestCodes.Silica) ? null : IsOff(earlier, thresholds));

        // Where the routes contradict each other, one of them is wrong and nobody knows which: that is a finding of its own.
        var alone = !confirmed && visit.Cycles.AgreeingRoutes is [FigureCodes.CyclesByConductivity] && DoubtfulReading.IsConductivity(visit);
        return new Indication(
            visit.Cycles.RoutesContradict || alone ? Severity.Watch : Confirm.Severity(confirmed, Math.Abs(deviation.Value) > 2 * limit.Value),
            new Said(Says, visit.Cycles.Best.Value, visit.Programme!.TargetCycles!.Value, deviation, new Amount(limit.Value, "%"), limit.Basis))
        {
            Evidence =
            [
                EvidenceFigure.Of(Deviation, deviation, -limit.Value, limit.Value),
                EvidenceFigure.Of(Cycles, visit.Cycles.Best.Value),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
