using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Findings;

/// <summary>The bleed flows while its output is off: conductivity far below the set point and a loss near the valve's full flow.</summary>
/// <remarks>
/// A smaller loss is <see cref="WaterLoss"/>: without a bleed meter a passing valve and a leak look alike, and shutting the hand valve
/// tells them apart.
/// </remarks>
public sealed class BleedNotClosing : IFindingRule
{
    // The output counts as off when it was on for less than this part of the time.
    private const double MostlyOff = 0.3;

    private static readonly Text Says = new(
        "With the bleed called {0} a day the system lost {1} a day, {2} of the valve's full flow (limit {3}, {4}), and conductivity is {5} against a set point of {6}.",
        "Con la purga accionada {0} al día el sistema perdió {1} al día, {2} del caudal pleno de la válvula (límite {3}, {4}), y la conductividad es {5} frente a una consigna de {6}.",
        "Com a purga acionada {0} por dia o sistema perdeu {1} por dia, {2} da vazão plena da válvula (limite {3}, {4}), e a condutividade é {5} contra um ponto de ajuste de {6}.");

    private static readonly Text Share = new("loss over the valve's full flow", "pérdida entre el caudal pleno de la válvula", "perda sobre a vazão plena da válvula");
    private static readonly Text True = new("conductivity of the tower water", "conductividad del agua de la torre", "condutividade da água da torre");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.BleedNotClosing, "the bleed valve does not close", "la válvula de purga no cierra", "a válvula de purga não fecha"),
        Looks.Cause(FindingKinds.WaterLoss, "a leak or overflow of the same size", "una fuga o un rebose del mismo tamaño", "um vazamento ou transbordamento do mesmo tamanho"),
        Looks.Cause(FindingKinds.SwitchNotAutomatic, "the valve was opened by hand", "la válvula se abrió a mano", "a válvula foi aberta à mão"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Look at the drain of the bleed with its output off.", "Mire el desagüe de la purga con su salida apagada.", "Veja o dreno da purga com a saída desligada."),
        Looks.Say("Shut the hand valve: if the loss stops it was the valve.", "Cierre la válvula manual: si cesa la pérdida, era la válvula.", "Feche a válvula manual: se a perda parar, era a válvula."),
        Looks.Say("Look for dirt under the valve's seat; isolate and release pressure first.", "Busque suciedad en el asiento de la válvula; aísle y descargue la presión primero.", "Procure sujeira na sede da válvula; isole e alivie a pressão primeiro."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.BleedNotClosing;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.BleedOutput is not { } output || visit.Programme?.SetPointUsPerCm is not { } setPoint)
        {
            yield break;
        }

        var about = visit.History.Subjects.Output(output);
        if (Because(visit) is { } reason)
        {
            yield return Verdict.NotJudged(about, reason);
        }
        else if (ConductivityOut.TrueConductivity(visit, thresholds) is not { } conductivity || visit.BleedNormal.Flow(visit, visit.Bleed.Value) is not { Value: > 0 } flow)
        {
            yield return Verdict.NotJudged(about, VisitReasons.NotMeasured);
        }
        else
        {
            var stretch = visit.Bleed.Value;
            var share = stretch.LossPerDay.Over(flow.Scaled(24, "L")).Scaled(100, "%");
            var below = setPoint - (thresholds.BleedShutDifferentials.Value * (visit.Programme.DifferentialUsPerCm ?? (0.02 * setPoint)));
            var found = share.Value >= thresholds.BleedShutPercent.Value && stretch.OpenPerDay < MostlyOff * 24 && conductivity.High < below;
            yield return found ? Verdict.Found(about, Shown(stretch, share, conductivity, (setPoint, below), thresholds)) : Verdict.Clear(about);
        }
    }

    private static Reason? Because(VisitFacts visit) => Settling.DoseGovernsBleed(visit)
        ? VisitReasons.DoseGovernsBleed
        : !visit.Bleed.HasValue ? visit.Bleed.Reasons[0] : visit.Bleed.Value.IsMetered ? VisitReasons.NotMeasured : null;

    private static Indication Shown(BleedInterval stretch, Estimate share, Estimate conductivity, (double SetPoint, double Below) limit, FindingThresholds thresholds) => new(
        Severity.Act,
        new Said(
            Says,
            new Amount(stretch.OpenPerDay, "h"),
            stretch.LossPerDay,
            share,
            new Amount(thresholds.BleedShutPercent.Value, "%"),
            thresholds.BleedShutPercent.Basis,
            conductivity,
            new Amount(limit.SetPoint, "uS/cm")))
    {
        Evidence = [EvidenceFigure.Of(Share, share, limitHigh: thresholds.BleedShutPercent.Value), EvidenceFigure.Of(True, conductivity, limitLow: limit.Below)],
        Suggests = Causes,
        LookAtNext = Next,
    };
}
