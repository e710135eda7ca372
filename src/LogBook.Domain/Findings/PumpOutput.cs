using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Findings;

/// <summary>A pump delivers per hour run other than it did, or than its rating says.</summary>
/// <remarks>
/// The drop of the drum per hour at one stroke and speed against the pump's own first drawdown, else its early output, and against its
/// rating; or a drawdown against the first one or the rating. Slow wear is seen because the comparison stays with the early output.
/// </remarks>
public sealed class PumpOutput : IFindingRule
{
    private const double NextToNothing = 0.25;

    // Between this share of the limit and the limit itself a verdict would flicker with every dip of the stick.
    private const double ClearShare = 0.6;

    private static readonly Text ByDrum = new(
        "Pump {0} delivers {1} by the drop of its drum over {2} days and {3} of running, against {4} {5}: {6} (limit {7}, {8}).",
        "La bomba {0} da {1} según la bajada de su bidón en {2} días y {3} de marcha, frente a {4} {5}: {6} (límite {7}, {8}).",
        "A bomba {0} entrega {1} pela queda da sua bombona em {2} dias e {3} de funcionamento, contra {4} {5}: {6} (limite {7}, {8}).");

    private static readonly Text ByColumn = new(
        "Pump {0} delivers {1} in the drawdown, against {2} {3}: {4} (limit {5}, {6}).",
        "La bomba {0} da {1} en la probeta, frente a {2} {3}: {4} (límite {5}, {6}).",
        "A bomba {0} entrega {1} na proveta, contra {2} {3}: {4} (limite {5}, {6}).");

    private static readonly Text Drawdown = new("in its first drawdown", "en su primera probeta", "na sua primeira proveta");
    private static readonly Text Early = new("in its first weeks", "en sus primeras semanas", "nas suas primeiras semanas");
    private static readonly Text Rating = new("by its rating", "según su placa", "pela placa");
    private static readonly Text Deviation = new("output against what it should be", "caudal frente a lo debido", "vazão contra o devido");
    private static readonly Text Output = new("output of the pump", "caudal de la bomba", "vazão da bomba");

    private static readonly (string, Said)[] LowCauses =
    [
        Looks.Cause(FindingKinds.PumpOutput, "the pump has lost prime, or its valves or hose are worn", "la bomba perdió el cebado, o sus válvulas o manguera están gastadas", "a bomba perdeu a escorva, ou suas válvulas ou mangueira estão gastas"),
        Looks.Cause(FindingKinds.SettingsChanged, "stroke or speed was moved and not written down", "se movió carrera o velocidad sin anotarlo", "curso ou velocidade foi mexido sem anotar"),
        Looks.Cause(FindingKinds.SwitchNotAutomatic, "the relay counts while the pump is switched off", "el relé cuenta con la bomba apagada", "o relé conta com a bomba desligada"),
    ];

    private static readonly (string, Said)[] HighCauses =
    [
        Looks.Cause(FindingKinds.SettingsChanged, "stroke or speed was moved and not written down", "se movió carrera o velocidad sin anotarlo", "curso ou velocidade foi mexido sem anotar"),
        Looks.Cause(FindingKinds.StockUnexplained, "the line siphons or the drum leaks", "la línea sifona o el bidón fuga", "a linha sifona ou a bombona vaza"),
        Looks.Cause("reading", "the rating on file is that of another setting", "la placa en la ficha es de otro ajuste", "a placa no cadastro é de outro ajuste"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Look at stroke, speed and the suction; make a drawdown.", "Mire carrera, velocidad y aspiración; mida con probeta.", "Veja curso, velocidade e sucção; meça com a proveta."),
        Looks.Say("Before opening it: isolate, release pressure, lock out as the site requires.", "Antes de abrirla: aísle, despresurice y bloquee según exija el sitio.", "Antes de abri-la: isole, despressurize e bloqueie como o local exige."),
        Looks.Say("Renew valves, diaphragm or hose, and enter it as an event.", "Cambie válvulas, membrana o manguera y anótelo como evento.", "Troque válvulas, membrana ou mangueira e anote como evento."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.PumpOutput;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var code in visit.History.PumpedDrums)
        {
            if (FeedParts.PumpOf(visit, code) is not { } pump)
            {
                continue;
            }

            var about = new About { Pump = pump.Code, Drum = pump.Drum };
            if (Compare(visit, pump) is not { Count: > 0 } compared)
            {
                if (visit.Drum(code) is not null)
                {
                    yield return Verdict.NotJudged(about, FeedParts.IsEmpty(visit.Drum(code)) == true ? VisitReasons.DrumEmpty : VisitReasons.WindowTooShort);
                }

                continue;
            }

            yield return Worst(compared, thresholds) is { } worst ? Verdict.Found(about, Shown(visit, worst, thresholds))
                : IsClear(compared, thresholds) ? Verdict.Clear(about)
                : Verdict.NotJudged(about, VisitReasons.NotClear);
        }
    }

    private static List<Comparison> Compare(VisitFacts visit, Pump pump)
    {
        var all = new List<Comparison>();
        var past = visit.PumpPast(pump);
        var rated = ProductUse.PumpRate(visit, pump.Drum);
        if (visit.PumpOutputs.FirstOrDefault(o => FeedParts.Same(o.Pump.Code, pump.Code)) is { } window)
        {
            if (window.Own is { Value: > 0 } own)
            {
                all.Add(new(pump, window, window.LitresPerHour.Value, own, window.OwnBasis));
            }

            if (rated is { Value: > 0 })
            {
                all.Add(new(pump, window, window.LitresPerHour.Value, rated, PumpBasis.Rating));
            }
        }

        if (PumpPast.DrawdownOf(visit, pump) is { } drawdown)
        {
            if (past.FirstDrawdown is { Value: > 0 } first && first != drawdown && PumpPast.Tells(first))
            {
                all.Add(new(pump, null, drawdown, first, PumpBasis.Drawdown));
            }

            if (rated is { Value: > 0 })
            {
                all.Add(new(pump, null, drawdown, rated, PumpBasis.Rating));
            }
        }

        return all;
    }

    private static Comparison? Worst(List<Comparison> compared, FindingThresholds thresholds) =>
        compared.Where(c => c.IsOff(thresholds)).MaxBy(c => Math.Abs(c.Ratio.Value - 1) / c.Limit(thresholds).Value);

    private static bool IsClear(List<Comparison> compared, FindingThresholds thresholds) =>
        compared.TrueForAll(c => Math.Abs(c.Ratio.Value - 1) <= ClearShare * c.Limit(thresholds).Value);

    private static Indication Shown(VisitFacts visit, Comparison off, FindingThresholds thresholds)
    {
        var limit = off.Limit(thresholds);
        var deviation = off.Ratio.Minus(Estimate.Exact(1)).Scaled(100, "%");
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            Compare(earlier, off.Pump) is not { Count: > 0 } then ? null
                : Worst(then, thresholds) is { } before ? before.Ratio.Value < 1 == off.Ratio.Value < 1
                : IsClear(then, thresholds) ? false : null);
        var beside = off.Window?.Beside is not { } mean
            || ((mean < off.Should.Value) == (off.Ratio.Value < 1) && Math.Abs((mean / off.Should.Value) - 1) > ClearShare * limit.Value);
        var borneOut = off.Window?.Longer is not { } longer
            || ((longer.Value < off.Should.Value) == (off.Ratio.Value < 1) && Math.Abs((longer.Value / off.Should.Value) - 1) > ClearShare * limit.Value);

        // Levels that the water does not bear out must say it over a stretch twice as telling.
        var side = Math.Sign(off.Ratio.Value - 1);
        var told = off.Window is not { } stretch || ResidualWitness.BearsOut(visit, stretch.Since, off.Pump.Drum, side * ClearShare * limit.Value)
            || (stretch.Longer is { } twice && side * ((twice.Value / off.Should.Value) - 1) > limit.Value);
        var nothing = off.Ratio.High < NextToNothing;
        var basis = off.Basis switch
        {
            PumpBasis.Drawdown => Drawdown,
            PumpBasis.Early => Early,
            _ => Rating,
        };
        return new Indication(
            nothing ? Severity.Act : Confirm.Severity(confirmed && borneOut && beside && told, Math.Abs(deviation.Value) >= 200 * limit.Value && beside),
            off.Window is { } window
                ? new Said(
                    ByDrum,
                    off.Pump.Code,
                    off.Is,
                    (visit.Visit.At - window.Since.Visit.At).TotalDays,
                    new Amount(window.Hours.Value.Value, "h"),
                    off.Should,
                    basis,
                    deviation,
                    new Amount(100 * limit.Value, "%"),
                    limit.Basis)
                : new Said(ByColumn, off.Pump.Code, off.Is, off.Should, basis, deviation, new Amount(100 * limit.Value, "%"), limit.Basis))
        {
            Evidence =
            [
                EvidenceFigure.Of(Deviation, deviation, -100 * limit.Value, 100 * limit.Value),
                EvidenceFigure.Of(Output, off.Is),
            ],
            Suggests = off.Ratio.Value < 1 ? LowCauses : HighCauses,
            LookAtNext = Next,
        };
    }

    private sealed record Comparison(Pump Pump, PumpOutputs? Window, Estimate Is, Estimate Should, PumpBasis Basis)
    {
        public Estimate Ratio { get; } = Is.Over(Should);

        public Threshold Limit(FindingThresholds thresholds) => Window is null ? thresholds.DrawdownShare : thresholds.PumpOutputShare;

        public bool IsOff(FindingThresholds thresholds) =>
            Math.Abs(Ratio.Value - 1) > Limit(thresholds).Value && Math.Abs(Ratio.Value - 1) > Ratio.ExpandedUncertainty;
    }
}
