using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Findings;

/// <summary>What the water says about a feed: the residual of an inhibitor over the level that its feed aims at.</summary>
/// <remarks>
/// Levels of a drum and results of a test have no error in common, so that this is a second route to the same figure. Levels alone make
/// a feed look a third off now and then; the water follows its feed within days.
/// </remarks>
internal static class ResidualWitness
{
    // One result of a kit is worth 8 % and a step.
    private const int Results = 2;

    /// <summary>Whether the water bears out that too little or too much is fed.</summary>
    /// <param name="visit">End of the window.</param>
    /// <param name="from">Beginning of the window; results from before it tell nothing.</param>
    /// <param name="drum">Code of the drum.</param>
    /// <param name="off">Share by which the level must be off to bear it out, with its sign.</param>
    /// <returns>True where it does, and where no residual tells.</returns>
    public static bool BearsOut(VisitFacts visit, VisitFacts from, string drum, double off) =>
        ShareOfAim(visit, from, drum) is not { } share || (share - 1) / off > 1;

    private static double? ShareOfAim(VisitFacts visit, VisitFacts from, string drum)
    {
        if (FeedParts.ProductInDrum(visit, drum) is not { Kind: ProductKind.Inhibitor, Residual.MgPerLPerMgProduct: > 0 and var perMg } product
            || FeedParts.FeedOf(visit, drum) is not { } feed
            || (feed.TargetMgPerL ?? product.DoseMgPerL) is not (> 0 and var aim)
            || FeedParts.ResidualTest(visit, product) is not { } test)
        {
            return null;
        }

        var (sum, count) = (0.0, 0);
        for (var at = visit; at is not null && at != from && count < Results; at = at.Previous)
        {
            if (at.Unsettled is null && at.TowerReading(test) is { Value.Value: var level })
            {
                (sum, count) = (sum + (level / (aim * perMg)), count + 1);
            }
        }

        return count == 0 ? null : sum / count;
    }
}
