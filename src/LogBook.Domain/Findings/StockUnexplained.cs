using LogBook.Domain.Drums;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Findings;

/// <summary>A drum's level rose without a delivery, or fell by more than its pump can have drawn.</summary>
/// <remarks>A fall is judged against hours run times pump output, and needs both; a rise needs two levels alone.</remarks>
public sealed class StockUnexplained : IFindingRule
{
    private static readonly Text Rose = new(
        "Drum {0} rose by {1} in {2} days and no delivery is on file (limit {3}, {4}).",
        "El bidón {0} subió {1} en {2} días y no consta entrega (límite {3}, {4}).",
        "A bombona {0} subiu {1} em {2} dias e não consta entrega (limite {3}, {4}).");

    private static readonly Text Fell = new(
        "Drum {0} fell by {1} in {2} days; its pump can have drawn {3}: {4} are unexplained (limit {5}, {6}).",
        "El bidón {0} bajó {1} en {2} días; su bomba pudo sacar {3}: {4} sin explicación (límite {5}, {6}).",
        "A bombona {0} baixou {1} em {2} dias; sua bomba pode ter tirado {3}: {4} sem explicação (limite {5}, {6}).");

    private static readonly Text Unexplained = new("change that nothing explains", "cambio sin explicación", "mudança sem explicação");

    private static readonly (string, Said)[] RiseCauses =
    [
        Looks.Cause("reading", "a delivery or an exchange was not written down, or its visit is still to come", "no se anotó una entrega o un cambio, o su visita está por llegar", "uma entrega ou troca não foi anotada, ou sua visita ainda está por vir"),
        Looks.Cause("reading", "a level or its unit slipped", "se equivocó un nivel o su unidad", "um nível ou sua unidade foi trocado"),
        Looks.Cause(FindingKinds.WrongProduct, "something else was filled in", "se rellenó con otra cosa", "foi enchida com outra coisa"),
    ];

    private static readonly (string, Said)[] FallCauses =
    [
        Looks.Cause("reading", "an exchange, a hand dose or a level was not written right", "un cambio, una dosis a mano o un nivel mal anotados", "uma troca, uma dose à mão ou um nível mal anotados"),
        Looks.Cause(FindingKinds.StockUnexplained, "the drum or its line leaks, or siphons into the system", "el bidón o su línea fugan, o sifonan al sistema", "a bombona ou sua linha vaza, ou sifona para o sistema"),
        Looks.Cause(FindingKinds.PumpOutput, "the pump delivers more than on file", "la bomba da más de lo que consta", "a bomba entrega mais do que consta"),
    ];

    private static readonly Said[] Next =
    [
        Looks.LevelAgain,
        Looks.Say("Look at the floor, the bund and the injection line; do not touch what was spilled without its safety data sheet.", "Mire el suelo, el cubeto y la línea de inyección; no toque lo derramado sin su ficha de seguridad.", "Olhe o chão, a contenção e a linha de injeção; não toque no que vazou sem a ficha de segurança."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.StockUnexplained;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var drum in visit.Drums)
        {
            if (!drum.Found.HasValue)
            {
                continue;
            }

            var code = drum.Drum.Code;
            var about = visit.History.Subjects.Drum(code);
            var from = FeedParts.LastLevelBefore(visit, code);
            var used = from is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : ProductUse.UsedBetween(from, visit, code);
            var brim = DrumVolume.Brim(drum.Drum);
            if (!used.HasValue || !brim.HasValue)
            {
                yield return Verdict.NotJudged(about, used.HasValue ? brim.Reasons[0] : used.Reasons[0]);
                continue;
            }

            var days = (visit.Visit.At - from!.Visit.At).TotalDays;
            var limit = new Amount(thresholds.StockShare.Value * brim.Value.Litres, "L");
            var rise = used.Value.Scaled(-1);
            if (rise.Value > limit.Value && rise.Value > rise.ExpandedUncertainty)
            {
                yield return Verdict.Found(about, Shown(
                    Severity.Watch, new Said(Rose, code, rise, days, limit, thresholds.StockShare.Basis), rise, limit.Value, RiseCauses));
                continue;
            }

            var drawn = Drawn(visit, drum, from);
            if (!drawn.HasValue)
            {
                // That it did not rise is known; whether it fell too far is not.
                yield return Verdict.NotJudged(about, drawn.Reasons[0]);
                continue;
            }

            var excess = used.Value.Minus(drawn.Value);
            yield return excess.Value > limit.Value && excess.Value > excess.ExpandedUncertainty
                ? Verdict.Found(about, Shown(
                    excess.Value > thresholds.StockFallActShare.Value * brim.Value.Litres ? Severity.Act : Severity.Watch,
                    new Said(Fell, code, used.Value, days, drawn.Value, excess, limit, thresholds.StockShare.Basis),
                    excess,
                    limit.Value,
                    FallCauses))
                : Verdict.Clear(about);
        }
    }

    private static Indication Shown(Severity severity, Said said, Estimate unexplained, double limit, (string, Said)[] causes) => new(severity, said)
    {
        Evidence = [EvidenceFigure.Of(Unexplained, unexplained, limitHigh: limit)],
        Suggests = causes,
        LookAtNext = Next,
    };

    // What the pump drew and what was poured by hand, perhaps from this drum.
    private static Computed<Estimate> Drawn(VisitFacts visit, DrumFacts drum, VisitFacts from)
    {
        var output = FeedParts.OutputOf(visit, drum.Drum.Code);
        if (output is null || ProductUse.PumpRate(visit, drum.Drum.Code) is not { } rate)
        {
            return Computed<Estimate>.None(VisitReasons.NotMeasured);
        }

        var hours = HoursSum.Between(from, visit, output);
        return hours.HasValue ? Computed<Estimate>.Of(hours.Value.Times(rate, "L").PlusExact(ProductUse.PouredBetween(from, visit, drum))) : hours;
    }
}
