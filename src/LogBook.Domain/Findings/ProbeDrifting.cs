using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>A probe whose error grows steadily and will pass the tolerance before the next visit.</summary>
/// <remarks>Straight line through at least four as-found errors by one hand meter since the last calibration, cleaning or new probe.</remarks>
public sealed class ProbeDrifting : IFindingRule
{
    private static readonly Text Says = new(
        "Probe {0} drifts by {1} over {2} readings and would be {3} off at the next visit (limit {4}, {5}).",
        "La sonda {0} deriva {1} en {2} lecturas y estaría {3} desviada en la próxima visita (límite {4}, {5}).",
        "A sonda {0} deriva {1} em {2} leituras e estaria {3} fora na próxima visita (limite {4}, {5}).");

    private static readonly Text Slope = new("slope of the as-found error", "pendiente del error encontrado", "inclinação do erro encontrado");
    private static readonly Text Forecast = new("error forecast for the next visit", "error previsto para la próxima visita", "erro previsto para a próxima visita");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.ProbeFouled, "the probe is fouling", "la sonda se ensucia", "a sonda está sujando"),
        Looks.Cause(FindingKinds.InstrumentShift, "the hand meter drifts", "el medidor portátil deriva", "o medidor portátil está derivando"),
    ];

    // The points of two visits are nearly the same series: a forecast just over the limit is watched until it stands clear of it.
    private const double HeadlineShare = 1.5;

    /// <inheritdoc />
    public string Kind => FindingKinds.ProbeDrifting;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var probe in visit.Probes.Where(probe => probe.ErrorFound.HasValue))
        {
            var about = visit.History.Subjects.Probe(probe.Probe);
            var drift = visit.Drift(probe);
            if (drift.Points < thresholds.ProbeDriftPoints.Value || !drift.SlopePerDay.HasValue)
            {
                // A series that a cleaning or calibration ended carries no drift any more; a short one says nothing yet.
                yield return drift.Points == 1 ? Verdict.Clear(about) : Verdict.NotJudged(about, VisitReasons.TooFewPoints);
            }
            else
            {
                yield return IsDrifting(drift, thresholds) ? Verdict.Found(about, Shown(visit, probe.Probe, drift, thresholds)) : Verdict.Clear(about);
            }
        }
    }

    private static bool IsDrifting(ProbeDrift drift, FindingThresholds thresholds) =>
        (drift.SlopeLow > 0 || drift.SlopeHigh < 0) && drift.Forecast is { } forecast && Math.Abs(forecast) > thresholds.ProbeForecastPercent.Value;

    private static Indication Shown(VisitFacts visit, string code, ProbeDrift drift, FindingThresholds thresholds)
    {
        var limit = thresholds.ProbeForecastPercent;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.Probes.FirstOrDefault(p => p.Probe.Equals(code, StringComparison.OrdinalIgnoreCase)) is { ErrorFound.HasValue: true } then
            && earlier.Drift(then) is { SlopePerDay.HasValue: true } before && before.Points >= thresholds.ProbeDriftPoints.Value
                ? IsDrifting(before, thresholds)
                : null);
        return new Indication(
            Confirm.Severity(confirmed && Math.Abs(drift.Forecast!.Value) >= HeadlineShare * limit.Value, Math.Abs(drift.Forecast!.Value) >= 2 * limit.Value),
            new Said(Says, code, new Amount(drift.SlopePerDay.Value.Value, "%/d"), (double)drift.Points, new Amount(drift.Forecast.Value, "%"), new Amount(limit.Value, "%"), limit.Basis))
        {
            Evidence =
            [
                new EvidenceFigure(Slope, drift.SlopePerDay.Value.Value, "%/d", drift.SlopeLow, drift.SlopeHigh, 0, 0),
                new EvidenceFigure(Forecast, drift.Forecast, "%", drift.ForecastLow, drift.ForecastHigh, -limit.Value, limit.Value),
            ],
            Suggests = Causes,
            LookAtNext = [Looks.CleanProbe, Looks.ProveMeter],
        };
    }
}
