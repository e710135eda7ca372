using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Conductivity and chloride tell different cycles than they usually do on this system.</summary>
/// <remarks>
/// Conductivity under-reads cycles by 5 to 15 % at 5 cycles, so the system's own ratio over at least five undisturbed visits is
/// the measure; before that wide fixed limits. Hypochlorite adds chloride: with an oxidising feed only the own ratio counts.
/// </remarks>
public sealed class CyclesDisagree : IFindingRule
{
    private static readonly Text AgainstOwn = new(
        "Conductivity tells {0} of the cycles by chloride; on this system it is usually {1} (limit ±{2}, {3}). {4}",
        "La conductividad da {0} de los ciclos por cloruro; en este sistema suele ser {1} (límite ±{2}, {3}). {4}",
        "A condutividade dá {0} dos ciclos por cloreto; neste sistema costuma ser {1} (limite ±{2}, {3}). {4}");

    private static readonly Text AgainstFixed = new(
        "Conductivity tells {0} of the cycles by chloride; {1} to {2} is possible ({3}). {4}",
        "La conductividad da {0} de los ciclos por cloruro; es posible de {1} a {2} ({3}). {4}",
        "A condutividade dá {0} dos ciclos por cloreto; é possível de {1} a {2} ({3}). {4}");

    private static readonly Text MoreChloride = new(
        "More chloride than the concentration explains, or conductivity read low.",
        "Más cloruro del que explica la concentración, o conductividad leída de menos.",
        "Mais cloreto do que a concentração explica, ou condutividade lida a menos.");

    private static readonly Text LessChloride = new(
        "Something other than the concentration adds conductivity, or chloride was read low.",
        "Algo distinto de la concentración añade conductividad, o se leyó poco cloruro.",
        "Algo além da concentração acrescenta condutividade, ou o cloreto foi lido a menos.");

    private static readonly Text Ratio = new("cycles by conductivity over cycles by chloride", "ciclos por conductividad entre ciclos por cloruro", "ciclos por condutividade sobre ciclos por cloreto");

    private static readonly (string, Said)[] LowCauses =
    [
        Looks.Reading,
        Looks.Cause(FindingKinds.MakeUpChanged, "the make-up chloride changed", "cambió el cloruro de la reposición", "o cloreto da reposição mudou"),
        Looks.Cause(FindingKinds.FeedHigh, "hypochlorite or another product adds chloride", "el hipoclorito u otro producto añade cloruro", "o hipoclorito ou outro produto acrescenta cloreto"),
    ];

    private static readonly (string, Said)[] HighCauses =
    [
        Looks.Reading,
        Looks.Cause(FindingKinds.FeedHigh, "too much product in the water", "demasiado producto en el agua", "produto demais na água"),
        Looks.Cause(FindingKinds.MakeUpChanged, "the make-up changed", "cambió la reposición", "a reposição mudou"),
    ];

    private const double HeadlineUncertainties = 3;

    /// <inheritdoc />
    public string Kind => FindingKinds.CyclesDisagree;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        var about = visit.History.Subjects.Test(TestCodes.Chloride);
        if (visit.Unsettled is { } reason)
        {
            yield return Verdict.NotJudged(about, reason);
        }
        else if (visit.TowerReading(TestCodes.Chloride) is not null)
        {
            yield return Disagrees(visit, thresholds) switch
            {
                null => Verdict.NotJudged(about, VisitReasons.NotMeasured),
                true => Verdict.Found(about, Shown(visit, thresholds)),
                false => Verdict.Clear(about),
            };
        }
    }

    private static Estimate? RatioOf(VisitFacts visit)
    {
        var cycles = visit.Cycles;
        return cycles.RawConductivity.HasValue && cycles.ByChloride.HasValue ? cycles.RawConductivity.Value.Over(cycles.ByChloride.Value) : null;
    }

    private static (double Low, double High)? LimitsOf(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Cycles.OwnRatio is { } own)
        {
            var share = thresholds.RoutesPercent.Value / 100;
            return (own * (1 - share), own * (1 + share));
        }

        return FeedsOxidant(visit) ? null : (thresholds.RoutesLow.Value, thresholds.RoutesHigh.Value);
    }

    private static bool? Disagrees(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Unsettled is not null || RatioOf(visit) is not { } ratio || LimitsOf(visit, thresholds) is not { } limits)
        {
            return null;
        }

        var centre = visit.Cycles.OwnRatio;
        var beyondUncertainty = centre is { } own ? Math.Abs(ratio.Value - own) > ratio.ExpandedUncertainty : ratio.High < limits.Low || ratio.Low > limits.High;
        return beyondUncertainty && (ratio.Value < limits.Low || ratio.Value > limits.High);
    }

    // By the drums of the day: a feed that took an oxidiser once, or will one day, adds no chloride now.
    internal static bool FeedsOxidant(VisitFacts visit)
    {
        foreach (var feed in visit.FeedsInForce)
        {
            if (FeedParts.ProductInDrum(visit, feed.Drum) is { Kind: ProductKind.Biocide, Oxidising: true })
            {
                return true;
            }
        }

        return false;
    }

    private static Indication Shown(VisitFacts visit, FindingThresholds thresholds)
    {
        var ratio = RatioOf(visit)!;
        var limits = LimitsOf(visit, thresholds)!.Value;
        var low = ratio.Value < limits.Low;
        var meaning = low ? MoreChloride : LessChloride;
        var confirmed = Confirm.ByEarlierVisit(visit, earlier => Confirm.RestOnOneMakeUp(earlier, visit, TestCodes.Chloride) ? null : Disagrees(earlier, thresholds));
        var said = visit.Cycles.OwnRatio is { } own
            ? new Said(AgainstOwn, ratio, own, new Amount(thresholds.RoutesPercent.Value, "%"), thresholds.RoutesPercent.Basis, meaning)
            : new Said(AgainstFixed, ratio, limits.Low, limits.High, thresholds.RoutesLow.Basis, meaning);

        // Two visits share their make-up readings, so the second alone proves little: a headline wants three standard uncertainties.
        var isClear = visit.Cycles.OwnRatio is not { } usual || Math.Abs(ratio.Value - usual) > HeadlineUncertainties * ratio.StandardUncertainty;
        return new Indication(confirmed && isClear ? Severity.Plan : Severity.Watch, said)
        {
            Evidence = [EvidenceFigure.Of(Ratio, ratio, limits.Low, limits.High)],
            Suggests = low ? LowCauses : HighCauses,
            LookAtNext = [Looks.ReadAgain, Looks.TestMakeUp],
        };
    }
}
