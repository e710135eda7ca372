using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A biocide dose moved product while the water did not circulate: the basin got it, the system did not.</summary>
/// <remarks>
/// When the doses really ran follows from the plan as the controller holds it and from its clock and week as read; whether the plant
/// circulated then, from its hours on file. A circulation pump that runs at night without standing in the pattern looks the same. A plant
/// found standing at both visits decides without any pattern.
/// </remarks>
public sealed class DoseUntreated : IFindingRule
{
    private const double WholePercent = 95;
    private const double LeastDose = 0.5;

    private static readonly Text Says = new(
        "{0} moved product, and {1} of {2} doses since {3} fell into hours without circulation: {4} of the contact time at the mean (limit {5}, {6}).",
        "{0} movió producto, y {1} de {2} dosis desde el {3} cayeron en horas sin circulación: {4} del tiempo de contacto de media (límite {5}, {6}).",
        "{0} moveu produto, e {1} de {2} doses desde {3} caíram em horas sem circulação: {4} do tempo de contato em média (limite {5}, {6}).");

    private static readonly Text SaysStanding = new(
        "{0} ran {1} since {2} while the plant stood still at both visits: the flow interlock did not hold it back.",
        "{0} funcionó {1} desde el {2} mientras la planta estaba parada en ambas visitas: el enclavamiento de caudal no la detuvo.",
        "{0} funcionou {1} desde {2} com a planta parada nas duas visitas: o intertravamento de vazão não a segurou.");

    private static readonly Text Dry = new("part of the contact time without circulation", "parte del tiempo de contacto sin circulación", "parte do tempo de contato sem circulação");
    private static readonly Text Hours = new("hours run since the last visit", "horas de marcha desde la última visita", "horas de funcionamento desde a última visita");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.ControllerClock, "clock or week of the controller is wrong", "el reloj o la semana del controlador está mal", "o relógio ou a semana do controlador está errado"),
        Looks.Cause(FindingKinds.DoseUntreated, "the flow switch is bridged or stuck", "el interruptor de caudal está puenteado o trabado", "a chave de fluxo está em ponte ou travada"),
        Looks.Cause("load", "the circulation pump runs at hours that are not on file", "la bomba de circulación marcha a horas que no constan", "a bomba de circulação funciona em horas não registradas"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Read clock and week; look up when the last doses ran.", "Lea reloj y semana; averigüe cuándo se aplicaron las últimas dosis.", "Leia relógio e semana; veja quando foram as últimas doses."),
        Looks.Say("Stop the flow on purpose and see the feed stop; chemical that collects in the pipe arrives at once at restart.", "Pare el caudal a propósito y vea parar la dosificación; el químico acumulado en la tubería llega de golpe al arrancar.", "Pare a vazão de propósito e veja a dosagem parar; o químico acumulado no tubo chega de uma vez na partida."),
        Looks.Say("Take a dip slide: the water was not treated.", "Tome una lámina de cultivo: el agua no fue tratada.", "Faça uma lâmina de cultura: a água não foi tratada."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.DoseUntreated;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (ControllerPlan.Of(visit) is not { } programme)
        {
            yield break;
        }

        foreach (var feed in programme.Feeds.Where(feed => feed.Mode == FeedMode.DosePlan && ControllerPlan.ProductOf(visit, feed) is { Kind: ProductKind.Biocide }))
        {
            if (ControllerPlan.OutputOf(visit, feed) is { } output)
            {
                yield return Judge(visit, programme, feed, output, thresholds);
            }
        }
    }

    private static Verdict Judge(VisitFacts visit, Programme programme, Feed feed, string output, FindingThresholds thresholds)
    {
        var about = visit.History.Subjects.Output(output);
        var hours = visit.HoursRun(output);
        if (visit.HoursSince(output) is not { } since || !hours.HasValue)
        {
            return Verdict.NotJudged(about, hours.HasValue ? VisitReasons.NotMeasured : hours.Reasons[0]);
        }

        if (hours.Value.Value < LeastDose * (feed.RunMinutes ?? 10) / 60 || !ProductMoved(visit, since, feed, hours.Value.Value))
        {
            return Verdict.Clear(about);
        }

        if (StoodStill(visit, since))
        {
            return Verdict.Found(about, new Indication(Severity.Act, new Said(SaysStanding, output, new Amount(hours.Value.Value, "h"), since.Day))
            {
                Evidence = [EvidenceFigure.Of(Hours, hours.Value)],
                Suggests = Causes,
                LookAtNext = Next,
            });
        }

        if (!RunHours.HasPauses(visit.History.System.Operation))
        {
            return Verdict.Clear(about);
        }

        return DryShare(visit, programme, feed, since) is { } dry && IsUntreated(dry, thresholds)
            ? Verdict.Found(about, Shown(visit, feed, output, since, dry, thresholds))
            : Verdict.Clear(about);
    }

    private static bool IsUntreated((int Doses, int Dry, double Percent) dry, FindingThresholds thresholds) => 2 * dry.Dry >= dry.Doses && dry.Percent >= thresholds.UntreatedPercent.Value;

    private static bool StoodStill(VisitFacts visit, VisitFacts since) => Stands(visit) && Stands(since)
        && visit.Back().TakeWhile(v => v != since).All(v => Stands(v) && v.Record.Events.All(e => e.Type is not (EventType.Started or EventType.Disinfected)));

    private static bool Stands(VisitFacts visit) => visit.Record.Running == false;

    // A relay that counts while nothing leaves the drum is another trouble.
    private static bool ProductMoved(VisitFacts visit, VisitFacts since, Feed feed, double hours)
    {
        if (ProductUse.PumpRate(visit, feed.Drum) is not { } rate || ProductUse.UsedBetween(since, visit, feed.Drum) is not { HasValue: true, Value: var used })
        {
            return true;
        }

        return used.High >= LeastDose * rate.Value * hours;
    }

    // Doses since a visit and how much of the time they should act in fell into hours without circulation.
    private static (int Doses, int Dry, double Percent)? DryShare(VisitFacts visit, Programme programme, Feed feed, VisitFacts since)
    {
        var product = ControllerPlan.ProductOf(visit, feed);
        var run = feed.RunMinutes ?? 0;
        var acts = product?.LabelContactHours * 60 ?? feed.HoldBleedShutMin ?? run;
        var starts = ControllerPlan.TrueStarts(visit, programme, feed, since.Visit.At, visit.Visit.At);
        if (starts.Count == 0 || acts <= 0)
        {
            return null;
        }

        var operation = visit.History.System.Operation;
        var shares = starts.Select(start => 100 * Math.Min(1, RunHours.StandingMinutes(operation, visit.History.Zone, start, start.AddMinutes(run + acts)) / acts)).ToList();
        return (starts.Count, shares.Count(share => share >= 50), shares.Average());
    }

    private static Indication Shown(VisitFacts visit, Feed feed, string output, VisitFacts since, (int Doses, int Dry, double Percent) dry, FindingThresholds thresholds)
    {
        // Twice the limit is the whole contact time.
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            ControllerPlan.Of(earlier) is { } programme
            && programme.Feeds.FirstOrDefault(f => f.Mode == FeedMode.DosePlan && f.Drum.Equals(feed.Drum, StringComparison.OrdinalIgnoreCase)) is { } before
            && earlier.HoursSince(output) is { } from
            && DryShare(earlier, programme, before, from) is { } then
                ? IsUntreated(then, thresholds)
                : null);
        return new Indication(
            Confirm.Severity(confirmed, dry.Percent >= WholePercent),
            new Said(Says, output, new Count(dry.Dry), new Count(dry.Doses), since.Day, new Amount(Math.Round(dry.Percent), "%"), new Amount(thresholds.UntreatedPercent.Value, "%"), thresholds.UntreatedPercent.Basis))
        {
            Evidence = [new EvidenceFigure(Dry, dry.Percent, "%", LimitHigh: thresholds.UntreatedPercent.Value), EvidenceFigure.Of(Hours, visit.HoursRun(output).Value)],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }
}
