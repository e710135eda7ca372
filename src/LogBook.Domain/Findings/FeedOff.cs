using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Product used against product expected for the water actually lost (inhibitors) or the doses planned.</summary>
/// <remarks>
/// Over the shortest window whose expected use is at least twelve times the uncertainty of one level. Oxidants and acids follow
/// demand, not loss: they are held against the system's own early use, for each litre of make-up and for each day, and both must be off.
/// Near the limit nothing is claimed and nothing closed.
/// </remarks>
public abstract class FeedOff : IFindingRule
{
    private const double HeadlineUncertainties = 3;

    private static readonly Text Says = new(
        "Drum {0}: {1} used in {2} days against {3} expected for the water lost or the doses planned, ratio {4} (limits {5} to {6}, {7}).",
        "Bidón {0}: {1} usados en {2} días frente a {3} esperados por el agua perdida o las dosis previstas, relación {4} (límites {5} a {6}, {7}).",
        "Bombona {0}: {1} usados em {2} dias contra {3} esperados pela água perdida ou pelas doses previstas, relação {4} (limites {5} a {6}, {7}).");

    private static readonly Text SaysOwn = new(
        "Drum {0}: {1} used in {2} days against {3} by the system's own earlier use for this much make-up, ratio {4} (limits {5} to {6}, {7}).",
        "Bidón {0}: {1} usados en {2} días frente a {3} según el consumo anterior del propio sistema para esta reposición, relación {4} (límites {5} a {6}, {7}).",
        "Bombona {0}: {1} usados em {2} dias contra {3} pelo consumo anterior do próprio sistema para esta reposição, relação {4} (limites {5} a {6}, {7}).");

    // Between this share of the limit and the limit itself a verdict would flicker with every dip of the stick.
    private const double ClearShare = 0.6;

    // The windows beside reach a little into the time before the trouble.
    private const double BesideShare = 0.8;

    private static readonly Text Ratio = new("used over expected", "usado entre esperado", "usado sobre esperado");
    private static readonly Text Used = new("product used", "producto usado", "produto usado");
    private static readonly Text Expected = new("product expected", "producto esperado", "produto esperado");

    private protected FeedOff()
    {
    }

    /// <inheritdoc />
    public abstract string Kind { get; }

    /// <summary>1 for too much, −1 for too little.</summary>
    private protected abstract int Side { get; }

    /// <summary>Causes, likeliest first.</summary>
    private protected abstract IReadOnlyList<(string Cause, Said Words)> Causes { get; }

    /// <summary>What to look at next.</summary>
    private protected abstract IReadOnlyList<Said> Next { get; }

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var use in visit.ProductUse)
        {
            var about = visit.History.Subjects.Drum(use.Drum.Drum.Code);
            if (!use.Ratio.HasValue)
            {
                yield return Verdict.NotJudged(about, use.Ratio.Reasons[0]);
            }
            else
            {
                yield return IsOff(use, thresholds) ? Verdict.Found(about, Shown(visit, use, thresholds))
                    : IsClear(use, thresholds) ? Verdict.Clear(about)
                    : Verdict.NotJudged(about, VisitReasons.NotClear);
            }
        }
    }

    private double LimitOf(ProductUse use, FindingThresholds thresholds) => use.AgainstOwnDays is not null
        ? 1 + (Side * thresholds.OwnUseShare.Value)
        : Side > 0 ? thresholds.FeedHigh.Value : thresholds.FeedLow.Value;

    private bool IsOff(ProductUse use, FindingThresholds thresholds)
    {
        var limit = LimitOf(use, thresholds);
        return IsBeyond(use.Ratio.Value, limit) && (use.AgainstOwnDays is not { } days || IsBeyond(days, limit));
    }

    private bool IsBeyond(Estimate ratio, double limit) =>
        Side * (ratio.Value - limit) > 0 && Math.Abs(ratio.Value - 1) > ratio.ExpandedUncertainty;

    private bool IsBorneOutBeside(ProductUse use, double limit) => use.Beside is not { } beside || Side * (beside - 1) > BesideShare * Math.Abs(limit - 1);

    private bool IsClear(ProductUse use, FindingThresholds thresholds)
    {
        var within = ClearShare * Math.Abs(LimitOf(use, thresholds) - 1);
        return Side * (use.Ratio.Value.Value - 1) <= within || (use.AgainstOwnDays is { } days && Side * (days.Value - 1) <= within);
    }

    private Indication Shown(VisitFacts visit, ProductUse use, FindingThresholds thresholds)
    {
        var ratio = use.Ratio.Value;
        var limit = LimitOf(use, thresholds);
        var (low, high) = use.AgainstOwnDays is null
            ? (thresholds.FeedLow.Value, thresholds.FeedHigh.Value)
            : (1 - thresholds.OwnUseShare.Value, 1 + thresholds.OwnUseShare.Value);
        var code = use.Drum.Drum.Code;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier =>
            earlier.ProductUse.FirstOrDefault(u => u.Drum.Drum.Code.Equals(code, StringComparison.OrdinalIgnoreCase)) is { Ratio.HasValue: true } then
                ? IsOff(then, thresholds) ? true : IsClear(then, thresholds) ? false : null
                : null);
        var borneOut = (use.Longer is not { } longer || Side * (longer.Value - 1) > ClearShare * Math.Abs(limit - 1)) && IsBorneOutBeside(use, limit);

        // Windows of two visits share most of their levels: the second alone proves little, so a headline wants three standard uncertainties.
        var isSure = Math.Abs(ratio.Value - 1) > HeadlineUncertainties * ratio.StandardUncertainty;

        // Levels that the water does not bear out must say it over a stretch twice as telling.
        var told = ResidualWitness.BearsOut(visit, use.From!, code, ClearShare * (limit - 1)) || (use.Longer is { } twice && IsBeyond(twice, limit));
        var severity = Confirm.Severity(confirmed && borneOut && isSure && told, Math.Abs(ratio.Value - 1) >= 2 * Math.Abs(limit - 1) && IsBorneOutBeside(use, limit));
        if (ResidualAgrees(visit, use))
        {
            severity = severity == Severity.Plan ? Severity.Act : Severity.Plan;
        }

        return new Indication(
            severity,
            new Said(
                use.AgainstOwnDays is null ? Says : SaysOwn,
                code,
                use.Used.Value,
                (visit.Visit.At - use.From!.Visit.At).TotalDays,
                use.Expected.Value,
                ratio,
                low,
                high,
                use.AgainstOwnDays is not null ? thresholds.OwnUseShare.Basis : Side > 0 ? thresholds.FeedHigh.Basis : thresholds.FeedLow.Basis))
        {
            Evidence =
            [
                EvidenceFigure.Of(Ratio, ratio, low, high),
                EvidenceFigure.Of(Used, use.Used.Value),
                EvidenceFigure.Of(Expected, use.Expected.Value),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        };
    }

    // The residual agrees when it is outside its range on the same side beyond its uncertainty.
    private bool ResidualAgrees(VisitFacts visit, ProductUse use)
    {
        if (use.Drum.Product is not { } product || FeedParts.ResidualTest(visit, product) is not { } test || visit.TowerReading(test) is not { } result || Residuals.RangeOf(visit, test) is not { } range)
        {
            return false;
        }

        return Side > 0 ? result.Value.Low > range.High : result.Value.High < range.Low;
    }
}
