using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>A pump ran far too long, emptied its drum, and the water has since lost the product.</summary>
/// <remarks>
/// Hours at least three times what is usual, the drum at its heel, and the residual below half of its low limit: "act". Where the
/// product has no test or it was not made, the first two are "plan". Read as an underfeed this would be answered by feeding more.
/// </remarks>
public sealed class OverfedThenEmpty : IFindingRule
{
    private const int UsualIntervals = 12;
    private const int FewestIntervals = 3;

    private static readonly Text Says = new(
        "Output {0} ran {1} against {2} expected in {3} days (limit {4} times, {5}) and emptied drum {6}: overfed for about {7}, then empty for about {8}.{9}{10}",
        "La salida {0} marchó {1} frente a {2} esperadas en {3} días (límite {4} veces, {5}) y vació el bidón {6}: sobredosificado unos {7}, luego vacío unos {8}.{9}{10}",
        "A saída {0} funcionou {1} contra {2} esperadas em {3} dias (limite {4} vezes, {5}) e esvaziou a bombona {6}: superdosado por cerca de {7}, depois vazio por cerca de {8}.{9}{10}");

    private static readonly Text Nothing = new("", "", "");

    private static readonly Text PeakSays = new(
        " The water may have reached about {0}.", " El agua pudo llegar a unos {0}.", " A água pode ter chegado a cerca de {0}.");

    private static readonly Text NowSays = new(" The test now shows {0}.", " La prueba da ahora {0}.", " O teste mostra agora {0}.");

    private static readonly Text NowSaysWith = new(
        " The test now shows {0}; from the peak that takes about {1} of wash-out.",
        " La prueba da ahora {0}; desde el máximo eso requiere unos {1} de lavado.",
        " O teste mostra agora {0}; desde o máximo isso leva cerca de {1} de diluição.");

    private static readonly Text NowSaysLeast = new(
        " The test now shows {0}; from the peak that takes at least about {1} of wash-out.",
        " La prueba da ahora {0}; desde el máximo eso requiere al menos unos {1} de lavado.",
        " O teste mostra agora {0}; desde o máximo isso leva ao menos cerca de {1} de diluição.");

    private static readonly Text Times = new("hours run over expected", "horas de marcha entre esperadas", "horas de funcionamento sobre esperadas");
    private static readonly Text OverfedDays = new("days overfed", "días sobredosificado", "dias superdosado");
    private static readonly Text EmptyDays = new("days empty", "días vacío", "dias vazio");
    private static readonly Text PeakFigure = new("level reached in the water", "nivel alcanzado en el agua", "nível atingido na água");
    private static readonly Text Residual = new("residual in the tower water", "residual en el agua de la torre", "residual na água da torre");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.SwitchNotAutomatic, "the output was left forced on", "la salida quedó forzada a marcha", "a saída ficou forçada ligada"),
        Looks.Cause(FindingKinds.SettingsChanged, "the feed setting was changed", "se cambió el ajuste de dosificación", "o ajuste de dosagem foi mudado"),
        Looks.Cause(FindingKinds.PulsesLost, "a contact or a sensor called without end", "un contacto o sensor pidió sin fin", "um contato ou sensor pediu sem fim"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Put the switch back to automatic before the drum is filled: the pump starts by itself.", "Ponga el selector en automático antes de llenar el bidón: la bomba arranca sola.", "Ponha a chave no automático antes de encher a bombona: a bomba parte sozinha."),
        Looks.Say("Do not raise the feed: it was not set too low.", "No suba la dosificación: no estaba baja.", "Não aumente a dosagem: ela não estava baixa."),
        Looks.Say("Check the discharge permit and the label for what was overfed.", "Revise el permiso de vertido y la etiqueta por lo sobredosificado.", "Verifique a licença de descarte e o rótulo pelo que foi superdosado."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.OverfedThenEmpty;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var drum in visit.Drums)
        {
            var about = visit.History.Subjects.Drum(drum.Drum.Code);
            var output = FeedParts.OutputOf(visit, drum.Drum.Code);
            if (output is null || FeedParts.IsEmpty(drum) is not { } isEmpty)
            {
                continue;
            }

            var run = visit.HoursRun(output);
            if (!run.HasValue)
            {
                yield return isEmpty ? Verdict.NotJudged(about, run.Reasons[0]) : Verdict.Clear(about);
            }
            else if (!isEmpty)
            {
                yield return Verdict.Clear(about);
            }
            else if (ExpectedHours(visit, drum, output) is not { HasValue: true, Value: > 0 and var expected })
            {
                yield return Verdict.NotJudged(about, VisitReasons.NoBaseline);
            }
            else
            {
                yield return Of(visit, drum, output, run.Value.Value, expected, thresholds) is { } shown ? Verdict.Found(about, shown) : Verdict.Clear(about);
            }
        }
    }

    private static Indication? Of(VisitFacts visit, DrumFacts drum, string output, double run, double expected, FindingThresholds thresholds)
    {
        var code = drum.Drum.Code;
        if (run < thresholds.OverfedTimes.Value * expected
            || FeedParts.LastLevelBefore(visit, code) is not { } from
            || ProductUse.UsedBetween(from, visit, code) is not { HasValue: true, Value: { Value: > 0 } drawn })
        {
            return null;
        }

        var test = drum.Product is { } product ? FeedParts.ResidualTest(visit, product) : null;
        var found = test is null ? null : visit.TowerReading(test)?.Value;
        var low = test is null ? null : Residuals.RangeOf(visit, test)?.Low;
        if (found is not null && low is { } least && found.Value >= least / 2)
        {
            return null;
        }

        var elapsed = (visit.Visit.At - from.Visit.At).TotalHours;
        var rate = FeedParts.PumpOf(visit, code) is { } pump && visit.PumpPast(pump).Own is { } own ? own.LitresPerHour
            : ProductUse.PumpRate(visit, code);
        var forced = visit.Record.Switches.Any(s => FeedParts.Same(s.Output, output) && s.Found == SwitchPosition.ForcedOn);
        var timeline = OverfeedTimeline.Of(elapsed, run, drawn, rate is { Value: > 0 } ? rate : drawn.Over(Estimate.Exact(run, "h"), "L/h"), forced);
        timeline = WithWater(visit, from, drum, timeline, drawn, found);
        return new Indication(
            found is not null && low is not null ? Severity.Act : Severity.Plan,
            new Said(
                Says,
                output,
                new Amount(run, "h"),
                new Amount(expected, "h"),
                elapsed / 24,
                thresholds.OverfedTimes.Value,
                thresholds.OverfedTimes.Basis,
                code,
                timeline.Overfed,
                timeline.Empty,
                timeline.Peak is { } peak ? new Said(PeakSays, peak) : Nothing,
                Now(timeline, found)))
        {
            Evidence =
            [
                new EvidenceFigure(Times, run / expected, "1", LimitHigh: thresholds.OverfedTimes.Value),
                EvidenceFigure.Of(OverfedDays, timeline.Overfed),
                EvidenceFigure.Of(EmptyDays, timeline.Empty),
                .. timeline.Peak is { } top ? [EvidenceFigure.Of(PeakFigure, top)] : Array.Empty<EvidenceFigure>(),
                .. found is not null ? [EvidenceFigure.Of(Residual, found, low / 2)] : Array.Empty<EvidenceFigure>(),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    private static object Now(OverfeedTimeline timeline, Estimate? found) => (found, timeline.WashedOut) switch
    {
        (null, _) => Nothing,
        ({ } now, null) => new Said(NowSays, now),
        ({ } now, { } washed) when timeline.IsWashedOutAtLeast => new Said(NowSaysLeast, now, new Amount(washed.Value, "d")),
        ({ } now, { } washed) => new Said(NowSaysWith, now, washed),
    };

    private static OverfeedTimeline WithWater(VisitFacts visit, VisitFacts from, DrumFacts drum, OverfeedTimeline timeline, Estimate drawn, Estimate? found)
    {
        if (visit.History.System.VolumeL is not { } volume || timeline.Overfed.Value <= 0)
        {
            return timeline;
        }

        var hours = (visit.Visit.At - from.Visit.At).TotalHours;

        // An overfeed raises conductivity and with it the bleed: what the valve let out tells it better than the mean of both ends.
        var loss = visit.BleedOutput is { } bleed && visit.HoursSince(bleed) == from && visit.Water.Bleed.HasValue
            ? visit.Water.Bleed
            : ProductUse.LossBetween(from, visit);
        var perHour = loss is { HasValue: true, Value.Value: > 0 }
            ? loss.Value.Scaled(1 / hours, "L/h")
            : new Estimate(volume / visit.FadingDays / 24, "L/h", 0.2 * volume / visit.FadingDays / 24);
        var feed = drawn.Over(timeline.Overfed.Scaled(24, "h"), "L/h").Scaled((drum.Product?.DensityKgPerL ?? 1) * 1e6, "1");
        var before = drum.Product?.Residual is { MgPerLPerMgProduct: > 0 } shows ? found?.Scaled(1 / shows.MgPerLPerMgProduct) : null;
        var start = FeedParts.FeedOf(visit, drum.Drum.Code)?.TargetMgPerL ?? drum.Product?.DoseMgPerL ?? 0;

        // What was drawn is known better than the time it took: its uncertainty must not count twice.
        feed = new Estimate(feed.Value, "1", 0.02 * feed.Value);
        return timeline.WithWater(visit.History.Firm.Engine.Uncertainties.SystemVolume().On(volume, "L"), perHour, feed, start, before);
    }

    // The output's own usual hours a day; before there are three intervals, what the programme asks.
    private static Computed<double> ExpectedHours(VisitFacts visit, DrumFacts drum, string output)
    {
        var since = visit.HoursSince(output)!;
        var days = (visit.Visit.At - since.Visit.At).TotalDays;
        var usual = visit.Back().Skip(1).Take(UsualIntervals)
            .Where(v => v.HoursRun(output).HasValue && v.Record.Running != false)
            .Select(v => v.HoursRun(output).Value.Value / Math.Max(0.5, (v.Visit.At - v.HoursSince(output)!.Visit.At).TotalDays))
            .ToList();
        if (usual.Count >= FewestIntervals && Statistics.Median(usual) is > 0 and var median)
        {
            return Computed<double>.Of(median * days);
        }

        return FeedParts.FeedOf(visit, drum.Drum.Code) switch
        {
            { Mode: FeedMode.FixedShare, SharePercent: { } share } => Computed<double>.Of(share / 100 * 24 * days),
            { Mode: FeedMode.ByMakeUpVolume, EveryL: > 0 and var every, RunSeconds: { } seconds } =>
                visit.Water.MakeUp.Map(makeUp => makeUp.Value / every * seconds / 3600),
            { Mode: FeedMode.AlongsideBleed } => visit.Water.BleedHours.Map(hours => hours.Value),
            { Mode: FeedMode.ShareOfLastBleed, SharePercent: { } share } => visit.Water.BleedHours.Map(hours => hours.Value * share / 100),
            { Mode: FeedMode.DosePlan } => Computed<double>.Of(
                PlannedRuns.Of(visit.History, drum.Drum.Code, since.Visit.At, visit.Visit.At).Sum(planned => (planned.Feed.RunMinutes ?? 0) / 60)),
            _ => Computed<double>.None(VisitReasons.NoBaseline),
        };
    }
}
