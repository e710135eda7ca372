using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>Liquid leaves by another way than the bleed.</summary>
/// <remarks>
/// The controller hides a leak: conductivity and make-up stay, the bleed opens less. So the loss by make-up over cycles is held against
/// what the system usually loses for the hours its bleed is open (<see cref="BleedNormal"/>), in water a day, not in hours: at low
/// load drift and a stop overflow weigh more, and that is no leak. A tower that stands still and takes water decides by its register.
/// </remarks>
public sealed class WaterLoss : IFindingRule
{
    private static readonly Text Says = new(
        "{0} a day leave by another way than the bleed: {1} of the normal bleed (limit {2} over the system's own usual loss, {3}). The bleed was open {4} a day. A leak, an overflow and a bleed valve that passes look alike.",
        "{0} al día salen por otra vía que la purga: {1} de la purga normal (límite {2} sobre la pérdida propia habitual, {3}). La purga estuvo abierta {4} al día. Una fuga, un rebose y una válvula de purga que pasa se ven igual.",
        "{0} por dia saem por outro caminho que a purga: {1} da purga normal (limite {2} acima da perda própria usual, {3}). A purga ficou aberta {4} por dia. Um vazamento, um transbordamento e uma válvula de purga que passa parecem iguais.");

    private static readonly Text SaysIdle = new(
        "The plant stood still and took {0} a day of make-up with the bleed shut: {1} of the normal bleed (limit {2}, {3}).",
        "La planta estaba parada y tomó {0} al día de reposición con la purga cerrada: {1} de la purga normal (límite {2}, {3}).",
        "A planta estava parada e tomou {0} por dia de reposição com a purga fechada: {1} da purga normal (limite {2}, {3}).");

    private static readonly Text Excess = new("loss beyond the usual for the bleed's hours, a day", "pérdida por encima de la habitual para las horas de purga, al día", "perda acima da usual para as horas de purga, por dia");
    private static readonly Text Share = new("that loss over the normal bleed", "esa pérdida entre la purga normal", "essa perda sobre a purga normal");
    private static readonly Text Loss = new("all liquid lost, make-up over cycles, a day", "todo el líquido perdido, reposición entre ciclos, al día", "todo o líquido perdido, reposição sobre ciclos, por dia");
    private static readonly Text Taken = new("make-up of the standing plant, a day", "reposición de la planta parada, al día", "reposição da planta parada, por dia");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.WaterLoss, "a leak, an overflow or drift from the tower", "una fuga, un rebose o arrastre de gotas en la torre", "um vazamento, um transbordamento ou arraste de gotas na torre"),
        Looks.Cause(FindingKinds.BleedNotClosing, "the bleed valve passes while shut", "la válvula de purga pasa estando cerrada", "a válvula de purga passa estando fechada"),
        Looks.Reading,
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Look at the overflow and the float valve with the plant running and standing.", "Mire el rebosadero y la válvula de flotador con la planta en marcha y parada.", "Veja o transbordamento e a válvula de boia com a planta funcionando e parada."),
        Looks.Say("Shut the hand valve of the bleed and look whether its drain still flows.", "Cierre la válvula manual de la purga y mire si su desagüe sigue corriendo.", "Feche a válvula manual da purga e veja se o dreno continua correndo."),
        Looks.TimeBleed,
        Looks.Say("Isolate parts of the circuit one by one and watch the register.", "Aísle partes del circuito una a una y observe el contador.", "Isole partes do circuito uma a uma e observe o hidrômetro."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.WaterLoss;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (Standing(visit) is { } standing)
        {
            yield return IsLoss(standing, thresholds) ? Verdict.Found(null, ShownIdle(visit, standing, thresholds)) : Verdict.Clear();
        }
        else if (!visit.Bleed.HasValue)
        {
            if (visit.Water.Since is not null)
            {
                yield return Verdict.NotJudged(null, visit.Bleed.Reasons[0]);
            }
        }
        else if (Running(visit) is { } running)
        {
            yield return IsLoss(running, thresholds) ? Verdict.Found(null, Shown(visit, running, thresholds)) : Verdict.Clear();
        }
        else
        {
            yield return Verdict.NotJudged(null, VisitReasons.NoValveFlow);
        }
    }

    /// <summary>Loss beyond the usual at a running plant; null where it cannot be worked out.</summary>
    internal static (Estimate Excess, double Normal)? Running(VisitFacts visit)
    {
        if (visit.Bleed is not { HasValue: true, Value: var stretch } || visit.BleedNormal.Forecast(visit, stretch) is not { } forecast)
        {
            return null;
        }

        return visit.BleedNormal.NormalBleedPerDay(visit, stretch) is { } normal ? (stretch.LossPerDay.Minus(forecast), normal) : null;
    }

    private static bool IsLoss((Estimate Excess, double Normal) found, FindingThresholds thresholds) =>
        found.Excess.Value > thresholds.WaterLossPercent.Value / 100 * found.Normal && found.Excess.Value > found.Excess.ExpandedUncertainty;

    // Both visits found the plant standing, nothing was filled and nothing started between them: what the register shows has gone somewhere.
    private static (Estimate Excess, double Normal)? Standing(VisitFacts visit)
    {
        if (!Stands(visit) || visit.Water is not { Since: { } since, MakeUp: { HasValue: true, Value: var makeUp } } || !Stands(since)
            || visit.Back().TakeWhile(v => v != since).Any(v => !Stands(v) || v.Record.Events.Any(e => e.Type is EventType.Started or EventType.Drained or EventType.Refilled or EventType.Cleaned)))
        {
            return null;
        }

        var days = (visit.Visit.At - since.Visit.At).TotalDays;
        var running = visit.Back().Take(60).FirstOrDefault(v => v.Bleed.HasValue);
        if (days < 1 || running is null || running.BleedNormal.NormalBleedPerDay(running, running.Bleed.Value) is not { } normal)
        {
            return null;
        }

        var bled = visit.Water.Bleed is { HasValue: true, Value: var bleed } ? bleed : Estimate.Exact(0, "L");
        return (makeUp.Minus(bled).Scaled(1 / days), normal);
    }

    private static bool Stands(VisitFacts visit) => visit.Record.Running == false || visit.Record.InUse == false;

    private static bool FeedsWithTheBleed(VisitFacts visit) => visit.Programme?.Feeds.Any(feed =>
        feed.Mode is FeedMode.AlongsideBleed or FeedMode.ShareOfLastBleed
        && FeedParts.DrumOn(visit, feed.Drum) is { } fed
        && FeedParts.ProductOf(visit, fed.Product)?.Kind is ProductKind.Inhibitor or null) == true;

    private static Indication Shown(VisitFacts visit, (Estimate Excess, double Normal) found, FindingThresholds thresholds)
    {
        var stretch = visit.Bleed.Value;
        var share = found.Excess.Scaled(100 / found.Normal, "%");

        // Before the system's own baseline stands only the larger limit decides at once.
        var confirmed = visit.BleedNormal.IsBaseline && Confirm.ByEarlierVisit(visit, earlier =>
            earlier.Visit.At <= stretch.From.Visit.At && Running(earlier) is { } then ? IsLoss(then, thresholds) : null);
        var severity = Confirm.Severity(confirmed, share.Value > thresholds.WaterLossOncePercent.Value && found.Excess.Low > thresholds.WaterLossPercent.Value / 100 * found.Normal);
        if (severity == Severity.Plan && (found.Excess.Value >= found.Normal || FeedsWithTheBleed(visit)))
        {
            severity = Severity.Act;
        }

        return new Indication(severity, new Said(
            Says,
            found.Excess,
            share,
            new Amount(thresholds.WaterLossPercent.Value, "%"),
            thresholds.WaterLossPercent.Basis,
            stretch.IsMetered ? new Amount(stretch.OpenPerDay, "L") : new Amount(stretch.OpenPerDay, "h")))
        {
            Evidence =
            [
                EvidenceFigure.Of(Share, share, limitHigh: thresholds.WaterLossPercent.Value),
                EvidenceFigure.Of(Excess, found.Excess, limitHigh: thresholds.WaterLossPercent.Value / 100 * found.Normal),
                EvidenceFigure.Of(Loss, stretch.LossPerDay),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    private static Indication ShownIdle(VisitFacts visit, (Estimate Excess, double Normal) found, FindingThresholds thresholds)
    {
        var share = found.Excess.Scaled(100 / found.Normal, "%");
        var confirmed = Confirm.ByEarlierVisit(visit, earlier => Standing(earlier) is { } then ? IsLoss(then, thresholds) : null);
        var severity = Confirm.Severity(confirmed, share.Value > thresholds.WaterLossOncePercent.Value);
        return new Indication(
            severity == Severity.Plan && found.Excess.Value >= found.Normal ? Severity.Act : severity,
            new Said(SaysIdle, found.Excess, share, new Amount(thresholds.WaterLossPercent.Value, "%"), thresholds.WaterLossPercent.Basis))
        {
            Evidence =
            [
                EvidenceFigure.Of(Share, share, limitHigh: thresholds.WaterLossPercent.Value),
                EvidenceFigure.Of(Taken, found.Excess),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
