using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>A calendar dose that did not run: hours and drum both show it.</summary>
/// <remarks>
/// Since the last visit: both at most 60 % of the plan and at least one whole dose short. Where the drum is too coarse to see the
/// doses it only has to agree; where it was not read hours alone are "watch" until a second visit shows the same. Not judged
/// at an idle plant, after a stop, or while a switch is off for a reason on file.
/// </remarks>
public sealed class DoseMissed : IFindingRule
{
    // A whole dose short, less what the display's tenths may hide.
    private const double AlmostOne = 0.8;

    private static readonly Text Says = new(
        "{0}: {1} of {2} planned doses seem to have run since {3}: {4} of pump time against {5} planned (limit {6}, {7}).",
        "{0}: parecen haber corrido {1} de {2} dosis previstas desde el {3}: {4} de bomba frente a {5} previstas (límite {6}, {7}).",
        "{0}: parecem ter corrido {1} de {2} doses previstas desde {3}: {4} de bomba contra {5} previstas (limite {6}, {7}).");

    private static readonly Text SaysDrum = new(
        "{0}: of {1} planned doses since {2}, {3} left the drum against {4} planned (limit {5}, {6}); hours are not known.",
        "{0}: de {1} dosis previstas desde el {2}, salieron {3} del bidón frente a {4} previstos (límite {5}, {6}); no se conocen las horas.",
        "{0}: de {1} doses previstas desde {2}, saíram {3} da bombona contra {4} previstos (limite {5}, {6}); as horas não são conhecidas.");

    private static readonly Text HoursShare = new("hours run over planned", "horas de marcha entre previstas", "horas de funcionamento sobre previstas");
    private static readonly Text DrumUse = new("product that left the drum", "producto que salió del bidón", "produto que saiu da bombona");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.SwitchNotAutomatic, "the output was off or the pump unplugged", "la salida estaba desconectada o la bomba desenchufada", "a saída estava desligada ou a bomba fora da tomada"),
        Looks.Cause(FindingKinds.SettingsLost, "the dose plan is empty or was changed", "el plan de dosis está vacío o cambió", "o plano de dose está vazio ou mudou"),
        Looks.Cause(FindingKinds.ControllerClock, "clock or week are wrong, or doses waited for flow", "reloj o semana están mal, o las dosis esperaron caudal", "relógio ou semana estão errados, ou as doses esperaram fluxo"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Look at the switch, the dose plan, the clock and the week.", "Mire el selector, el plan de dosis, el reloj y la semana.", "Veja a chave, o plano de dose, o relógio e a semana."),
        Looks.PumpRuns,
        Looks.Say("Ask the supervisor before a dose is made up; the label's gap counts.", "Pregunte al supervisor antes de reponer una dosis; cuenta el intervalo de la etiqueta.", "Pergunte ao supervisor antes de repor uma dose; vale o intervalo do rótulo."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.DoseMissed;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var dosing in visit.PlannedDosing)
        {
            var about = visit.History.Subjects.Drum(dosing.Drum.Code);
            if (dosing.Excuse(visit) is { } excuse)
            {
                yield return Verdict.NotJudged(about, excuse);
            }
            else if (dosing.Planned.Count == 0 || (dosing.HoursShare is null && !DrumTells(dosing)))
            {
                yield return Verdict.NotJudged(about, VisitReasons.NotMeasured);
            }
            else
            {
                yield return IsMissed(dosing, thresholds) ? Verdict.Found(about, Shown(visit, dosing, thresholds)) : Verdict.Clear(about);
            }
        }
    }

    // Whether two levels can tell the planned doses from none at all.
    private static bool DrumTells(PlannedDosing dosing) =>
        dosing.LitresUsed.HasValue && dosing.LitresPlanned.HasValue && dosing.LitresPlanned.Value.Value > 2 * dosing.LitresUsed.Value.ExpandedUncertainty;

    private static bool IsMissed(PlannedDosing dosing, FindingThresholds thresholds)
    {
        var limit = thresholds.DoseMissedShare.Value;
        if (dosing.HoursShare is not { } share)
        {
            return dosing.LitresUsed.Value.High <= limit * dosing.LitresPlanned.Value.Value;
        }

        var oneShort = dosing.Planned.Count - dosing.DosesRun!.Value >= AlmostOne;
        var drumAgrees = !dosing.LitresUsed.HasValue || !dosing.LitresPlanned.HasValue || dosing.LitresUsed.Value.Low <= limit * dosing.LitresPlanned.Value.Value;
        return share <= limit && oneShort && drumAgrees;
    }

    private static Indication Shown(VisitFacts visit, PlannedDosing dosing, FindingThresholds thresholds)
    {
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.PlannedDosing.FirstOrDefault(d => FeedParts.Same(d.Drum.Code, dosing.Drum.Code)) is { Planned.Count: > 0 } then
            && then.Excuse(earlier) is null && (then.HoursShare is not null || DrumTells(then))
                ? IsMissed(then, thresholds)
                : null);
        var limit = thresholds.DoseMissedShare;
        var name = dosing.Product?.Name ?? dosing.Drum.Product;
        var since = dosing.Since.Day;
        var (said, share) = dosing.HoursShare is { } hours
            ? (new Said(
                Says,
                name,
                Math.Round(hours * dosing.Planned.Count),
                (double)dosing.Planned.Count,
                since,
                new Amount(dosing.HoursRun.Value.Value, "h"),
                new Amount(dosing.HoursPlanned, "h"),
                new Amount(100 * limit.Value, "%"),
                limit.Basis), hours)
            : (new Said(
                SaysDrum,
                name,
                (double)dosing.Planned.Count,
                since,
                dosing.LitresUsed.Value,
                dosing.LitresPlanned.Value,
                new Amount(100 * limit.Value, "%"),
                limit.Basis), dosing.LitresUsed.Value.Value / dosing.LitresPlanned.Value.Value);

        // Twice the shortfall of the limit (at most a fifth of the plan) speaks for itself where hours and drum were read both.
        var both = dosing.HoursShare is not null && dosing.LitresUsed.HasValue;
        return new Indication(Confirm.Severity(confirmed, both && 1 - share >= 2 * (1 - limit.Value)), said)
        {
            Evidence =
            [
                new EvidenceFigure(dosing.HoursShare is null ? DrumUse : HoursShare, 100 * share, "%", LimitLow: 100 * limit.Value),
                .. dosing.LitresUsed.HasValue ? [EvidenceFigure.Of(DrumUse, dosing.LitresUsed.Value, dosing.LitresPlanned.HasValue ? limit.Value * dosing.LitresPlanned.Value.Value : null)] : Array.Empty<EvidenceFigure>(),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
