using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>The bleed is called for and does not flow: its hours grow and conductivity rises all the same.</summary>
/// <remarks>
/// Load is in the comparison (hours against make-up over cycles), so a hot week makes no evidence; after a hold or a lowered set point
/// nothing is judged. A bucket that shows next to nothing decides without any balance.
/// </remarks>
public sealed class BleedNotFlowing : IFindingRule
{
    // So much of the usual flow counts as nothing seen flowing.
    private const double NextToNothing = 0.25;

    private static readonly Text Says = new(
        "The bleed was open {0} a day, {1} times what the water lost needs (limit {2}, {3}), and conductivity is {4} against a set point of {5}.",
        "La purga estuvo abierta {0} al día, {1} veces lo que necesita el agua perdida (límite {2}, {3}), y la conductividad es {4} frente a una consigna de {5}.",
        "A purga ficou aberta {0} por dia, {1} vezes o que a água perdida precisa (limite {2}, {3}), e a condutividade é {4} contra um ponto de ajuste de {5}.");

    private static readonly Text SaysHours = new(
        "The bleed was open {0} a day, {1} times what the water lost needs (limit {2}, {3}); conductivity still holds.",
        "La purga estuvo abierta {0} al día, {1} veces lo que necesita el agua perdida (límite {2}, {3}); la conductividad aún se mantiene.",
        "A purga ficou aberta {0} por dia, {1} vezes o que a água perdida precisa (limite {2}, {3}); a condutividade ainda se mantém.");

    private static readonly Text SaysBucket = new(
        "Timed into a bucket the bleed gives {0} where {1} is usual.",
        "Medida con un cubo, la purga da {0} cuando lo habitual es {1}.",
        "Medida com um balde, a purga dá {0} onde o usual é {1}.");

    private static readonly Text Ratio = new("hours of the bleed over what the water lost needs", "horas de purga entre las que necesita el agua perdida", "horas de purga sobre as que a água perdida precisa");
    private static readonly Text True = new("conductivity of the tower water", "conductividad del agua de la torre", "condutividade da água da torre");
    private static readonly Text Timed = new("bleed flow timed", "caudal de purga medido", "vazão de purga medida");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.BleedNotFlowing, "strainer or line of the bleed is blocked", "el filtro o la línea de purga está obstruida", "o filtro ou a linha de purga está obstruída"),
        Looks.Cause(FindingKinds.BleedNotFlowing, "the valve does not open, or a hand valve is shut", "la válvula no abre o una válvula manual está cerrada", "a válvula não abre ou uma válvula manual está fechada"),
        Looks.Reading,
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Call the bleed by hand and look at its drain; put it back to automatic.", "Accione la purga a mano y mire su desagüe; vuelva a ponerla en automático.", "Acione a purga à mão e veja o dreno; volte a colocá-la em automático."),
        Looks.Say("Look at hand valves and the strainer before the valve; isolate and release pressure first.", "Mire las válvulas manuales y el filtro antes de la válvula; aísle y descargue la presión primero.", "Veja as válvulas manuais e o filtro antes da válvula; isole e alivie a pressão primeiro."),
        Looks.TimeBleed,
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.BleedNotFlowing;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.BleedOutput is not { } output)
        {
            yield break;
        }

        var about = visit.History.Subjects.Output(output);
        if (Bucket(visit) is { } bucket && bucket.Now < NextToNothing * bucket.Usual)
        {
            yield return Verdict.Found(about, ShownBucket(bucket));
        }
        else if (Because(visit) is { } reason)
        {
            yield return Verdict.NotJudged(about, reason);
        }
        else if (RatioOf(visit) is { } ratio)
        {
            yield return IsOff(ratio, thresholds) ? Verdict.Found(about, Shown(visit, ratio, thresholds)) : Verdict.Clear(about);
        }
        else
        {
            yield return Verdict.NotJudged(about, VisitReasons.NoValveFlow);
        }
    }

    private static Reason? Because(VisitFacts visit) => Settling.DoseGovernsBleed(visit)
        ? VisitReasons.DoseGovernsBleed
        : visit.Bleed.HasValue ? visit.Bleed.Value.IsMetered ? VisitReasons.NotMeasured : null : visit.Bleed.Reasons[0];

    private static Estimate? RatioOf(VisitFacts visit)
    {
        var stretch = visit.Bleed.Value;
        return visit.BleedNormal.Flow(visit, stretch) is { Value: > 0 } flow && stretch.LossPerDay.Value > 0
            ? flow.Scaled(stretch.OpenPerDay, "L").Over(stretch.LossPerDay)
            : null;
    }

    private static bool IsOff(Estimate ratio, FindingThresholds thresholds) =>
        ratio.Value > thresholds.BleedHoursTimes.Value && ratio.Value - 1 > ratio.ExpandedUncertainty;

    private static Estimate? High(VisitFacts visit, FindingThresholds thresholds) =>
        visit.Programme?.SetPointUsPerCm is { } setPoint && ConductivityOut.TrueConductivity(visit, thresholds) is { } conductivity && conductivity.Low > setPoint
            ? conductivity
            : null;

    private static (double Now, double Usual)? Bucket(VisitFacts visit)
    {
        if (visit.Record.BleedTest is not { Seconds: > 0 } test)
        {
            return null;
        }

        var earlier = visit.Back().Skip(1).Select(v => v.Record.BleedTest).FirstOrDefault(t => t is { Seconds: > 0, Litres: > 0 });
        var usual = earlier is not null ? earlier.Litres / earlier.Seconds * 3600 : visit.History.System.BleedTimed?.LPerH ?? visit.History.System.BleedValveLPerH;
        return usual is { } flow and > 0 ? (test.Litres / test.Seconds * 3600, flow) : null;
    }

    private static Indication ShownBucket((double Now, double Usual) bucket) => new(
        Severity.Act,
        new Said(SaysBucket, new Amount(bucket.Now, "L/h"), new Amount(bucket.Usual, "L/h")))
    {
        Evidence = [new EvidenceFigure(Timed, bucket.Now, "L/h", LimitLow: NextToNothing * bucket.Usual)],
        Suggests = Causes,
        LookAtNext = Next,
    };

    private static Indication Shown(VisitFacts visit, Estimate ratio, FindingThresholds thresholds)
    {
        var limit = thresholds.BleedHoursTimes;
        var open = new Amount(visit.Bleed.Value.OpenPerDay, "h");
        if (High(visit, thresholds) is not { } conductivity)
        {
            return new Indication(Severity.Watch, new Said(SaysHours, open, ratio, limit.Value, limit.Basis))
            {
                Evidence = [EvidenceFigure.Of(Ratio, ratio, limitHigh: limit.Value)],
                Suggests = Causes,
                LookAtNext = Next,
            };
        }

        // Hours and conductivity are two witnesses; both at once and far beyond, or twice, decide.
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            Because(earlier) is null && RatioOf(earlier) is { } then ? IsOff(then, thresholds) && High(earlier, thresholds) is not null : null);
        var large = ratio.Value - 1 >= 2 * (limit.Value - 1);
        return new Indication(
            confirmed || large ? Severity.Act : Severity.Plan,
            new Said(Says, open, ratio, limit.Value, limit.Basis, conductivity, new Amount(visit.Programme!.SetPointUsPerCm!.Value, "uS/cm")))
        {
            Evidence =
            [
                EvidenceFigure.Of(Ratio, ratio, limitHigh: limit.Value),
                EvidenceFigure.Of(True, conductivity, limitHigh: visit.Programme.SetPointUsPerCm),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
