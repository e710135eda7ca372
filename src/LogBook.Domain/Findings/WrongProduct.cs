using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>The label found on a drum, or the residual in the water, contradicts the product that the drum should hold.</summary>
/// <remarks>
/// A label decides at once. Without one: the level falls as it should, and yet the water holds less than a quarter of what that much
/// product would give, for more than three half-lives; the first time it is "watch", since a reagent may have failed.
/// </remarks>
public sealed class WrongProduct : IFindingRule
{
    private const double HalfLives = 3;
    private const double LongestDays = 60;
    private const double LeastShareOfTarget = 0.5;

    private static readonly Text ByLabel = new(
        "Drum {0} should hold {1}; {2} was found on it.",
        "El bidón {0} debería contener {1}; se encontró {2}.",
        "A bombona {0} deveria conter {1}; foi encontrado {2}.");

    private static readonly Text ByBalance = new(
        "Drum {0} lost {1} in {2} days, enough for {3} in the water; the {4} test shows {5}: {6} of it (limit {7}, {8}). Another product may be in the drum, or the line may end on the floor.",
        "El bidón {0} perdió {1} en {2} días, bastante para {3} en el agua; la prueba de {4} da {5}: {6} de eso (límite {7}, {8}). Quizá hay otro producto en el bidón, o la línea acaba en el suelo.",
        "A bombona {0} perdeu {1} em {2} dias, o bastante para {3} na água; o teste de {4} dá {5}: {6} disso (limite {7}, {8}). Talvez haja outro produto na bombona, ou a linha termine no chão.");

    private static readonly Text Share = new("residual over what the product used would give", "residual entre lo que daría el producto usado", "residual sobre o que o produto usado daria");
    private static readonly Text Level = new("level by what the drum lost", "nivel según lo que perdió el bidón", "nível pelo que a bombona perdeu");
    private static readonly Text Residual = new("residual in the tower water", "residual en el agua de la torre", "residual na água da torre");
    private static readonly Text Mismatch = new("labels that differ", "etiquetas que difieren", "rótulos que diferem");

    private static readonly (string, Said)[] LabelCauses =
    [
        Looks.Cause(FindingKinds.WrongProduct, "a drum of another product was connected or filled in", "se conectó o rellenó con otro producto", "foi conectada ou enchida com outro produto"),
        Looks.Cause("reading", "the code was misread", "el código se leyó mal", "o código foi lido errado"),
    ];

    private static readonly (string, Said)[] BalanceCauses =
    [
        Looks.Cause(FindingKinds.WrongProduct, "another product is in the drum", "hay otro producto en el bidón", "há outro produto na bombona"),
        Looks.Cause(FindingKinds.StockUnexplained, "the injection line is off or leaks: look at the floor", "la línea de inyección está suelta o fuga: mire el suelo", "a linha de injeção está solta ou vaza: olhe o chão"),
        Looks.Cause("reading", "the reagent has failed", "el reactivo falló", "o reagente falhou"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Read the label and the lot on the drum; look at the injection point and the floor.", "Lea etiqueta y lote en el bidón; mire el punto de inyección y el suelo.", "Leia rótulo e lote na bombona; veja o ponto de injeção e o chão."),
        Looks.Say("Stop the pump if the product is wrong, and tell the supervisor what went into the water.", "Pare la bomba si el producto es otro, y diga al supervisor qué entró al agua.", "Pare a bomba se o produto for outro, e diga ao supervisor o que entrou na água."),
        Looks.Say("Repeat the test with another lot of reagent.", "Repita la prueba con otro lote de reactivo.", "Repita o teste com outro lote de reagente."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.WrongProduct;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var drum in visit.Drums)
        {
            var about = visit.History.Subjects.Drum(drum.Drum.Code);
            if (drum.Reading.ProductFound is { } found && !FeedParts.Same(found, drum.Drum.Product))
            {
                yield return Verdict.Found(about, Labelled(visit, drum, found));
                continue;
            }

            var balance = Balance.Of(visit, drum);
            if (balance is { HasValue: true, Value: var known })
            {
                yield return IsOff(known, thresholds) ? Verdict.Found(about, Shown(visit, known, thresholds)) : Verdict.Clear(about);
            }
            else
            {
                yield return drum.Reading.ProductFound is null ? Verdict.NotJudged(about, balance.Reasons[0]) : Verdict.Clear(about);
            }
        }
    }

    private static bool IsOff(Balance balance, FindingThresholds thresholds) =>
        balance.Share.Value < thresholds.WrongProductShare.Value && balance.Share.High < 2 * thresholds.WrongProductShare.Value;

    private static Indication Labelled(VisitFacts visit, DrumFacts drum, string found) => new(
        Severity.Act,
        new Said(ByLabel, drum.Drum.Code, drum.Product?.Name ?? drum.Drum.Product, FeedParts.ProductOf(visit, found)?.Name ?? found))
    {
        Evidence = [new EvidenceFigure(Mismatch, 1, "1", LimitHigh: 0)],
        Suggests = LabelCauses,
        LookAtNext = Next,
    };

    private static Indication Shown(VisitFacts visit, Balance balance, FindingThresholds thresholds)
    {
        var code = balance.Drum.Drum.Code;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.Drum(code) is { } then && Balance.Of(earlier, then) is { HasValue: true, Value: var before } ? IsOff(before, thresholds) : null);
        var test = balance.Test;
        return new Indication(
            confirmed ? Severity.Act : Severity.Watch,
            new Said(
                ByBalance,
                code,
                balance.Used,
                balance.Days,
                balance.Level,
                TestTexts.InSentence(test, visit.History.Firm),
                balance.Residual,
                new Amount(100 * balance.Share.Value, "%"),
                new Amount(100 * thresholds.WrongProductShare.Value, "%"),
                thresholds.WrongProductShare.Basis))
        {
            Evidence =
            [
                EvidenceFigure.Of(Share, balance.Share, thresholds.WrongProductShare.Value),
                EvidenceFigure.Of(Level, balance.Level),
                EvidenceFigure.Of(Residual, balance.Residual),
            ],
            Suggests = BalanceCauses,
            LookAtNext = Next,
        };
    }

    // What the product that left the drum would hold in the water in steady running: mass over liquid loss.
    private sealed record Balance(DrumFacts Drum, string Test, Estimate Used, double Days, Estimate Level, Estimate Residual, Estimate Share)
    {
        public static Computed<Balance> Of(VisitFacts visit, DrumFacts drum)
        {
            var none = Computed<Balance>.None(VisitReasons.NotMeasured);

            // What oxidises or kills is used up in the water: its residual says nothing of the balance.
            if (drum.Product is not { Kind: not ProductKind.Biocide, Residual: { } shows } || visit.TowerReading(shows.Test) is not { } result)
            {
                return none;
            }

            if (visit.Unsettled is { } reason)
            {
                return Computed<Balance>.None(reason);
            }

            // A drum that ran dry explains a low residual by itself.
            if (FeedParts.IsEmpty(drum) != false)
            {
                return none;
            }

            foreach (var from in visit.Back().Skip(1))
            {
                var days = (visit.Visit.At - from.Visit.At).TotalDays;
                if (days > LongestDays)
                {
                    break;
                }

                if (days < HalfLives * 0.693 * visit.FadingDays)
                {
                    continue;
                }

                var used = ProductUse.UsedBetween(from, visit, drum.Drum.Code);
                var loss = ProductUse.LossBetween(from, visit);
                if (!used.HasValue || !loss.HasValue || loss.Value.Value <= 0)
                {
                    continue;
                }

                if (used.Value.Value < 2 * used.Value.ExpandedUncertainty)
                {
                    continue;
                }

                var level = used.Value.Over(loss.Value, "1").Scaled(1e6 * (drum.Product.DensityKgPerL ?? 1) * shows.MgPerLPerMgProduct, "mg/L");
                var target = FeedParts.FeedOf(visit, drum.Drum.Code)?.TargetMgPerL ?? drum.Product.DoseMgPerL;
                if (level.Low < LeastShareOfTarget * shows.MgPerLPerMgProduct * target)
                {
                    // Too little was fed in any case: that is another finding.
                    return none;
                }

                return Computed<Balance>.Of(new Balance(drum, shows.Test, used.Value, days, level, result.Value, result.Value.Over(level)));
            }

            return Computed<Balance>.None(VisitReasons.WindowTooShort);
        }
    }
}
