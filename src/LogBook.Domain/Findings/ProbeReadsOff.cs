using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>A conductivity probe that differs from the reference beyond tolerance and uncertainty.</summary>
/// <remarks>
/// Same flowing water, settled, same temperature basis. A hand meter that was not proved in a standard counts with its wider
/// uncertainty and never makes more than "watch".
/// </remarks>
public sealed class ProbeReadsOff : IFindingRule
{
    private static readonly Text Says = new(
        "Probe {0} read {1} as found against {2} by the hand meter: {3} off (limit {4}, {5}).",
        "La sonda {0} leía {1} al encontrarla frente a {2} del medidor portátil: {3} de diferencia (límite {4}, {5}).",
        "A sonda {0} lia {1} como encontrada contra {2} do medidor portátil: {3} de diferença (limite {4}, {5}).");

    private static readonly Text FoundAgainst = new("as found against reference", "como se encontró frente a la referencia", "como encontrado contra a referência");
    private static readonly Text LeftAgainst = new("as left against reference", "como se dejó frente a la referencia", "como deixado contra a referência");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.ProbeFouled, "the probe is fouled", "la sonda está sucia", "a sonda está suja"),
        Looks.Cause(FindingKinds.InstrumentShift, "the hand meter reads wrong", "el medidor portátil lee mal", "o medidor portátil lê errado"),
        Looks.Cause("reading", "air or no flow at the probe", "aire o falta de flujo en la sonda", "ar ou falta de fluxo na sonda"),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.ProbeReadsOff;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var probe in visit.Probes)
        {
            var about = visit.History.Subjects.Probe(probe.Probe);
            if (visit.Record.Running == false)
            {
                yield return Verdict.NotJudged(about, VisitReasons.Idle);
            }
            else if (probe.Reading.SettledMin < thresholds.SettledMinutes.Value)
            {
                yield return Verdict.NotJudged(about, VisitReasons.NotSettled);
            }
            else if (!probe.ErrorFound.HasValue)
            {
                yield return Verdict.NotJudged(about, probe.ErrorFound.Reasons[0]);
            }
            else
            {
                yield return IsOff(probe, thresholds) ? Verdict.Found(about, Shown(visit, probe, thresholds)) : Verdict.Clear(about);
            }
        }
    }

    internal static double TolerancePercent(ProbeFacts probe, FindingThresholds thresholds) =>
        Math.Max(thresholds.ProbeErrorPercent.Value, 100 * thresholds.ProbeErrorUsPerCm.Value / probe.Reference.Value.Value);

    internal static bool IsOff(ProbeFacts probe, FindingThresholds thresholds)
    {
        var error = probe.ErrorFound.Value;
        return Math.Abs(error.Value) > TolerancePercent(probe, thresholds) && Math.Abs(error.Value) > error.ExpandedUncertainty;
    }

    private static Indication Shown(VisitFacts visit, ProbeFacts probe, FindingThresholds thresholds)
    {
        var error = probe.ErrorFound.Value;
        var tolerance = TolerancePercent(probe, thresholds);
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.Record.Running != false
            && earlier.Probes.FirstOrDefault(p => p.Probe.Equals(probe.Probe, StringComparison.OrdinalIgnoreCase)) is { ErrorFound.HasValue: true } then
                ? IsOff(then, thresholds) && Math.Sign(then.ErrorFound.Value.Value) == Math.Sign(error.Value)
                : null);
        var severity = Confirm.Severity(confirmed, Math.Abs(error.Value) >= 2 * tolerance);
        var evidence = new List<EvidenceFigure> { EvidenceFigure.Of(FoundAgainst, error, -tolerance, tolerance) };
        if (probe.ErrorLeft.HasValue)
        {
            var left = probe.ErrorLeft.Value;
            evidence.Add(EvidenceFigure.Of(LeftAgainst, left, -thresholds.ProbeLeftPercent.Value, thresholds.ProbeLeftPercent.Value));
            severity = Math.Abs(left.Value) > thresholds.ProbeLeftPercent.Value ? Severity.Act : severity;
        }

        return new Indication(
            probe.IsProved ? severity : Severity.Watch,
            new Said(
                Says,
                probe.Probe,
                new Amount(probe.AsFoundUsPerCm, "uS/cm"),
                new Amount(probe.Reference.Value.Value, "uS/cm"),
                error,
                new Amount(tolerance, "%"),
                thresholds.ProbeErrorPercent.Basis))
        {
            Evidence = evidence,
            Suggests = Causes,
            LookAtNext = [Looks.CleanProbe, Looks.ProveMeter],
        };
    }
}
