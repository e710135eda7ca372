using LogBook.Domain.Cycles;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>A dose holds the bleed shut so long that conductivity passes the high alarm before it opens again.</summary>
/// <remarks>
/// Settings decide at once. The label's contact time stands above this arithmetic: less of it is never advised, but another hour, another
/// level to begin from, another product or a higher limit.
/// </remarks>
public sealed class HoldTooLong : IFindingRule
{
    private const int MakeUpReadings = 5;

    private static readonly Text Says = new(
        "{0} holds the bleed shut for {1}; from {2} conductivity rises to {3}, above the high alarm of {4} ({5}). {6}",
        "{0} mantiene cerrada la purga {1}; desde {2} la conductividad sube a {3}, por encima de la alarma alta de {4} ({5}). {6}",
        "{0} mantém a purga fechada por {1}; a partir de {2} a condutividade sobe a {3}, acima do alarme alto de {4} ({5}). {6}");

    private static readonly Text Fits = new(
        "For conductivity alone {0} would fit; the contact time of the label rules.",
        "Solo por la conductividad cabrían {0}; manda el tiempo de contacto de la etiqueta.",
        "Só pela condutividade caberiam {0}; vale o tempo de contato do rótulo.");

    private static readonly Text TooShort = new(
        "For conductivity alone {0} would fit, and the label asks for {1} of contact: do not shorten it below that.",
        "Solo por la conductividad cabrían {0}, y la etiqueta pide {1} de contacto: no lo acorte por debajo.",
        "Só pela condutividade caberiam {0}, e o rótulo pede {1} de contato: não encurte abaixo disso.");

    private static readonly Text After = new("conductivity at the end of the hold", "conductividad al final del cierre", "condutividade ao fim do fechamento");
    private static readonly Text Busy = new("evaporation in the busy season, L/h", "evaporación en temporada alta, L/h", "evaporação na alta temporada, L/h");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.HoldTooLong, "the hold was copied from a system with more water for its load", "el cierre se copió de un sistema con más agua para su carga", "o fechamento foi copiado de um sistema com mais água para sua carga"),
        Looks.Cause(FindingKinds.SettingsChanged, "the high alarm or the hold was changed", "se cambió la alarma alta o el cierre", "o alarme alto ou o fechamento foi alterado"),
        Looks.Cause("load", "the dose falls into the hours of high load", "la dosis cae en las horas de carga alta", "a dose cai nas horas de carga alta"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Move the dose to hours of low load.", "Pase la dosis a horas de carga baja.", "Passe a dose para horas de carga baixa."),
        Looks.Say("Bleed down first, so that the hold begins lower.", "Purgue antes, para que el cierre empiece más abajo.", "Purgue antes, para o fechamento começar mais baixo."),
        Looks.Say("Ask for another product or agree a higher limit; keep the label's contact time.", "Pida otro producto o acuerde un límite mayor; respete el tiempo de contacto de la etiqueta.", "Peça outro produto ou combine um limite maior; respeite o tempo de contato do rótulo."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.HoldTooLong;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (ControllerPlan.Of(visit) is not { HighAlarmUsPerCm: { } highAlarm and > 0, SetPointUsPerCm: { } setPoint } programme)
        {
            yield break;
        }

        var alarm = thresholds.HoldRise.Value / 100 * highAlarm;
        foreach (var feed in programme.Feeds.Where(feed => feed.Mode == FeedMode.DosePlan && feed.HoldBleedShutMin > 0 && feed.Starts.Count > 0))
        {
            var about = new About { Output = ControllerPlan.OutputOf(visit, feed), Drum = ControllerPlan.OutputOf(visit, feed) is null ? feed.Drum : null };
            if (visit.History.System.VolumeL is not { } volumeL || MakeUpOf(visit) is not { } makeUp || BusySeason.EvaporationPerHour(visit) is not { } evaporation)
            {
                yield return Verdict.NotJudged(about, VisitReasons.NotMeasured);
                continue;
            }

            var start = StartOf(visit, feed, setPoint, makeUp, evaporation.Value);
            var hours = feed.HoldBleedShutMin!.Value / 60;
            var volume = visit.History.Firm.Engine.Uncertainties.SystemVolume().On(volumeL, "L");
            var rise = Estimate.Exact(makeUp, "uS/cm").Times(evaporation, "uS/cm").Over(volume, "uS/cm").Scaled(hours);
            var end = rise.Plus(Estimate.Exact(start, "uS/cm"));

            yield return end.Value <= alarm
                ? Verdict.Clear(about)
                : Verdict.Found(about, Shown(visit, feed, (start, makeUp, volumeL), end, evaporation, alarm, thresholds));
        }
    }

    private static Indication Shown(
        VisitFacts visit, Feed feed, (double Start, double MakeUp, double VolumeL) water, Estimate end, Estimate evaporation, double alarm, FindingThresholds thresholds)
    {
        // The volume is known to a fifth at best. One standard uncertainty beyond the alarm makes it far likelier than not, and settings can be put right at no cost.
        var sure = end.Value - alarm > end.StandardUncertainty;
        var product = ControllerPlan.ProductOf(visit, feed);
        var longest = BleedAroundDose.LongestHold(water.Start, alarm, water.MakeUp, evaporation.Value, 0, water.VolumeL);
        var fits = new Amount(longest.HasValue ? longest.Value : 0, "h");
        var advice = product?.LabelContactHours is { } contact && longest.HasValue && longest.Value < contact
            ? new Said(TooShort, fits, new Amount(contact, "h"))
            : new Said(Fits, fits);
        return new Indication(
            sure ? Severity.Plan : Severity.Watch,
            new Said(
                Says,
                product?.Name ?? feed.Drum,
                new Amount(feed.HoldBleedShutMin!.Value / 60, "h"),
                new Amount(Math.Round(water.Start), "uS/cm"),
                end,
                new Amount(alarm, "uS/cm"),
                thresholds.HoldRise.Basis,
                advice))
        {
            Evidence =
            [
                EvidenceFigure.Of(After, end, limitHigh: alarm),
                new EvidenceFigure(Busy, evaporation.Value, "L/h", evaporation.Low, evaporation.High),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    // The middle of the last few readings: one slipped digit is not to move a dose.
    private static double? MakeUpOf(VisitFacts visit)
    {
        var last = new List<double>(MakeUpReadings);
        for (var at = visit; at is not null && last.Count < MakeUpReadings; at = at.Previous)
        {
            if (at.MakeUpReading(TestCodes.Conductivity) is { } reading)
            {
                last.Add(reading.Value.Value);
            }
        }

        var asked = visit.Programme?.MakeUp?.ConductivityUsPerCm;
        return last.Count < MakeUpReadings && asked is not null ? asked : last.Count > 0 ? Statistics.Median(last) : null;
    }

    // The bleed stands open until the level or the time is reached; then the hold begins there.
    private static double StartOf(VisitFacts visit, Feed feed, double setPoint, double makeUp, double evaporation)
    {
        if (feed.BleedDownFirst is not { } down)
        {
            return setPoint;
        }

        var target = Math.Min(setPoint, down.ToUsPerCm ?? 0);
        if (down.Minutes is not { } minutes || visit.Water.ValveFlow is not { HasValue: true, Value: { Value: > 0 } flow } || visit.History.System.VolumeL is not { } volume)
        {
            return target > 0 ? target : setPoint;
        }

        var reached = CirculatingSystem.LevelAfter(setPoint, makeUp, evaporation, flow.Value, volume, minutes / 60);
        return reached.HasValue ? Math.Min(setPoint, Math.Max(target, reached.Value)) : setPoint;
    }
}
