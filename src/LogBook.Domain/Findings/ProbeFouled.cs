using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>A probe whose error is dirt: cleaning takes it away, it keeps coming back to one side, or it was calibrated away while dirty.</summary>
public sealed class ProbeFouled : IFindingRule
{
    private const int ErrorsInARow = 3;
    private const int LongestLookBack = 60;

    private static readonly Text CleaningHelped = new(
        "Probe {0} was {1} off as found and {2} after cleaning: cleaning took away {3} of the error (limit {4}, {5}).",
        "La sonda {0} estaba {1} desviada al encontrarla y {2} tras limpiarla: la limpieza quitó {3} del error (límite {4}, {5}).",
        "A sonda {0} estava {1} fora como encontrada e {2} após limpar: a limpeza tirou {3} do erro (limite {4}, {5}).");

    private static readonly Text OneSided = new(
        "Probe {0} was off to the same side three times in a row, {1} on average (limit {2}, {3}).",
        "La sonda {0} estuvo desviada al mismo lado tres veces seguidas, {1} de media (límite {2}, {3}).",
        "A sonda {0} esteve fora para o mesmo lado três vezes seguidas, {1} em média (limite {2}, {3}).");

    private static readonly Text CalibratedDirty = new(
        "Probe {0} was calibrated uncleaned twice within {1} days, both times to the same side ({2}).",
        "La sonda {0} se calibró sin limpiar dos veces en {1} días, ambas al mismo lado ({2}).",
        "A sonda {0} foi calibrada sem limpar duas vezes em {1} dias, ambas para o mesmo lado ({2}).");

    private static readonly Text Share = new("share of the error that cleaning took away", "parte del error que quitó la limpieza", "parte do erro que a limpeza tirou");
    private static readonly Text Found = new("as found against reference", "como se encontró frente a la referencia", "como encontrado contra a referência");
    private static readonly Text Mean = new("mean of three errors in a row", "media de tres errores seguidos", "média de três erros seguidos");
    private static readonly Text Latest = new("error calibrated away", "error anulado por calibración", "erro anulado por calibração");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.ProbeFouled, "the probe is coated", "la sonda está recubierta", "a sonda está recoberta"),
        Looks.Cause("reading", "an air pocket or no flow past the probe", "una bolsa de aire o falta de flujo en la sonda", "uma bolsa de ar ou falta de fluxo na sonda"),
    ];

    private static readonly Said[] Next =
    [
        Looks.CleanProbe,
        Looks.Say("Ask what coats it: slime, scale, oil.", "Vea qué la recubre: limo, incrustación, aceite.", "Veja o que a recobre: limo, incrustação, óleo."),
    ];

    private const double MedianShare = 0.6;

    /// <inheritdoc />
    public string Kind => FindingKinds.ProbeFouled;

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
            else if (!probe.ErrorFound.HasValue)
            {
                yield return Verdict.NotJudged(about, probe.ErrorFound.Reasons[0]);
            }
            else
            {
                yield return Of(visit, probe, thresholds) is { } indication ? Verdict.Found(about, indication) : Verdict.Clear(about);
            }
        }
    }

    private static Indication? Of(VisitFacts visit, ProbeFacts probe, FindingThresholds thresholds) =>
        ByCalibrations(visit, probe, thresholds) ?? ByRow(visit, probe, thresholds) ?? ByCleaning(visit, probe, thresholds);

    private static bool CleaningTookItAway(ProbeFacts probe, FindingThresholds thresholds, UncertaintyTable uncertainties, out double share)
    {
        share = 0;
        if (!probe.ErrorCleaned.HasValue || !probe.ErrorFound.HasValue)
        {
            return false;
        }

        var (found, cleaned) = (probe.ErrorFound.Value.Value, probe.ErrorCleaned.Value.Value);
        share = found == 0 ? 0 : 1 - (cleaned / found);

        // Display and reference stand in both errors: what counts is the change of the display alone.
        var change = Math.Sqrt(2) * 100 * uncertainties.Share(UncertaintyCodes.ControllerDisplay);
        return Math.Abs(found) > thresholds.FouledErrorPercent.Value && Math.Abs(found - cleaned) > 2 * change
            && Math.Abs(cleaned) <= (1 - thresholds.FouledShare.Value) * Math.Abs(found);
    }

    private static Indication? ByCleaning(VisitFacts visit, ProbeFacts probe, FindingThresholds thresholds)
    {
        var uncertainties = visit.History.Firm.Engine.Uncertainties;
        if (!CleaningTookItAway(probe, thresholds, uncertainties, out var share))
        {
            return null;
        }

        var confirmed = Confirm.ByEarlierVisit(visit, earlier => Same(earlier, probe) is { ErrorCleaned.HasValue: true } then ? CleaningTookItAway(then, thresholds, uncertainties, out _) : null);
        return new Indication(
            Confirm.Severity(confirmed, Math.Abs(probe.ErrorFound.Value.Value) >= 2 * thresholds.FouledErrorPercent.Value),
            new Said(
                CleaningHelped,
                probe.Probe,
                new Amount(probe.ErrorFound.Value.Value, "%"),
                new Amount(probe.ErrorCleaned.Value.Value, "%"),
                new Amount(100 * share, "%"),
                new Amount(100 * thresholds.FouledShare.Value, "%"),
                thresholds.FouledShare.Basis))
        {
            Evidence =
            [
                new EvidenceFigure(Share, 100 * share, "%", LimitHigh: 100 * thresholds.FouledShare.Value),
                EvidenceFigure.Of(Found, probe.ErrorFound.Value, -thresholds.FouledErrorPercent.Value, thresholds.FouledErrorPercent.Value),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    // Three errors on one side whose mean lies beyond limit and uncertainty: scatter averages out, the hand meter's own error does not.
    private static Indication? ByRow(VisitFacts visit, ProbeFacts probe, FindingThresholds thresholds)
    {
        var row = new List<(VisitFacts Visit, ProbeFacts Facts)>(ErrorsInARow);
        for (var earlier = visit; earlier is not null && row.Count < ErrorsInARow; earlier = earlier.Previous)
        {
            if (Same(earlier, probe) is { ErrorFound.HasValue: true } then)
            {
                row.Add((earlier, then));
            }
        }

        if (row.Count < ErrorsInARow || MeanOf([.. row.Select(then => then.Facts.ErrorFound.Value)]) is not { } mean || !IsBeyond(mean, thresholds))
        {
            return null;
        }

        // Dirt is what came since the probe was last clean or set: an error it was left with, or that a calibration gave it, is none.
        var grown = MeanOf([.. row.Select(then => GrownSince(then.Visit, then.Facts))]);

        // One jump among three is an offset or a slip: dirt shows on each.
        var usual = Statistics.Median([.. row.Select(then => Math.Abs(then.Facts.ErrorFound.Value.Value))]);
        return grown is not null && IsBeyond(grown, thresholds) && Math.Sign(mean.Value) == Math.Sign(grown.Value)
            && usual > MedianShare * Math.Abs(mean.Value)
            ? new Indication(
                Math.Abs(mean.Value) - mean.StandardUncertainty > thresholds.FouledErrorPercent.Value ? Severity.Plan : Severity.Watch,
                new Said(OneSided, probe.Probe, mean, new Amount(thresholds.FouledErrorPercent.Value, "%"), thresholds.FouledErrorPercent.Basis))
            {
                Evidence = [EvidenceFigure.Of(Mean, mean, -thresholds.FouledErrorPercent.Value, thresholds.FouledErrorPercent.Value)],
                Suggests = Causes,
                LookAtNext = Next,
            }
            : null;
    }

    private static bool IsBeyond(Estimate error, FindingThresholds thresholds) =>
        Math.Abs(error.Value) > thresholds.FouledErrorPercent.Value && Math.Abs(error.Value) > error.ExpandedUncertainty;

    /// <summary>Mean of errors that lie to one side; null when they do not.</summary>
    private static Estimate? MeanOf(Estimate[] errors)
    {
        var sum = errors[0];
        foreach (var error in errors.AsSpan(1))
        {
            if (Math.Sign(error.Value) != Math.Sign(errors[0].Value))
            {
                return null;
            }

            sum = sum.Plus(error);
        }

        return sum.Scaled(1.0 / errors.Length);
    }

    /// <summary>Error as found less the one the probe was last left with after a cleaning or a calibration.</summary>
    private static Estimate GrownSince(VisitFacts visit, ProbeFacts probe)
    {
        var earlier = visit.Previous;
        for (var i = 0; i < LongestLookBack && earlier is not null; i++, earlier = earlier.Previous)
        {
            if (Same(earlier, probe) is { Restarts: true, ErrorLeft: { HasValue: true, Value: var left } } then)
            {
                // The hand meter's own error is the same in both only until its next check in a standard.
                var shared = string.Equals(then.Instrument, probe.Instrument, StringComparison.OrdinalIgnoreCase)
                    && !ReadingEstimates.WasChecked(visit.History, probe.Instrument, earlier.Visit.At, visit.Visit.At);

                // Several later errors are taken against this one: naming its own part keeps it from averaging out.
                var own = $"left:{earlier.Visit.Visit.Id}";
                return probe.ErrorFound.Value.Minus(shared
                    ? left.RandomNamed(own)
                    : new Estimate(left.Value, left.Unit, 0).WithCommon(own, left.StandardUncertainty));
            }
        }

        return probe.ErrorFound.Value;
    }

    private static Indication? ByCalibrations(VisitFacts visit, ProbeFacts probe, FindingThresholds thresholds)
    {
        var dirty = new List<Estimate>(2);
        for (var earlier = visit; earlier is not null && dirty.Count < 2 && (visit.Visit.At - earlier.Visit.At).TotalDays <= thresholds.FouledCalibrationDays.Value; earlier = earlier.Previous)
        {
            var then = Same(earlier, probe);
            if (then?.Reading.AfterCleaning is not null)
            {
                break;
            }

            if (then is { Reading.Calibrated: true, ErrorFound.HasValue: true })
            {
                dirty.Add(then.ErrorFound.Value);
            }
        }

        return dirty.Count == 2 && Math.Sign(dirty[0].Value) == Math.Sign(dirty[1].Value)
            ? new Indication(Severity.Plan, new Said(CalibratedDirty, probe.Probe, thresholds.FouledCalibrationDays.Value, thresholds.FouledCalibrationDays.Basis))
            {
                Evidence = [EvidenceFigure.Of(Latest, dirty[0]), EvidenceFigure.Of(Latest, dirty[1])],
                Suggests = Causes,
                LookAtNext = Next,
            }
            : null;
    }

    private static ProbeFacts? Same(VisitFacts visit, ProbeFacts probe) => visit.Probe(probe.Probe);
}
