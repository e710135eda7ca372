using LogBook.Domain.Drums;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Estimates;

/// <summary>How long one biocide has certainly not worked.</summary>
/// <param name="Drum">Code of its drum.</param>
/// <param name="Name">Name of the product.</param>
/// <param name="LastWorked">Latest moment at which it may have worked, UTC; null where the records do not tell.</param>
/// <param name="Why">What tells it.</param>
internal sealed record BiocideCover(string Drum, string Name, DateTime? LastWorked, BiocideGap Why)
{
    private const int Reach = 12;
    private const double NoHours = 0.1;

    /// <summary>Every biocide of the programme in force.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>One entry for each feed of a biocide.</returns>
    public static IReadOnlyList<BiocideCover> Of(VisitFacts visit) =>
    [
        .. (visit.Programme?.Feeds ?? [])
            .Select(feed => (feed, product: FeedParts.ProductInDrum(visit, feed.Drum)))
            .Where(pair => pair.product?.Kind == ProductKind.Biocide)
            .Select(pair => pair.feed.Mode switch
            {
                FeedMode.DosePlan => ByPlan(visit, pair.feed, pair.product!),
                FeedMode.ByHand => ByHand(visit, pair.feed, pair.product!),
                _ => ByResidual(visit, pair.feed, pair.product!),
            }),
    ];

    private static BiocideCover Unknown(Feed feed, Product product) => new(feed.Drum, product.Name, null, BiocideGap.Unknown);

    // Without hours none of the planned doses ran; from a drum at its heel only those that its stock allowed.
    private static BiocideCover ByPlan(VisitFacts visit, Feed feed, Product product)
    {
        var (last, why) = (visit.Visit.At, BiocideGap.Unknown);
        var missed = 0;
        var at = visit;
        for (var i = 0; i < Reach; i++)
        {
            var dosing = at.PlannedDosing.FirstOrDefault(d => FeedParts.Same(d.Drum.Code, feed.Drum));
            if (dosing is null || dosing.Excuse(at) is not null)
            {
                return missed == 0 ? Unknown(feed, product) : new(feed.Drum, product.Name, last, why);
            }

            var ran = dosing.HoursRun.HasValue ? dosing.HoursRun.Value.Value : (double?)null;
            if (IsNone(ran, dosing) || (ran is null && dosing.LitresUsed is { HasValue: true } used && dosing.LitresPlanned is { HasValue: true } planned && used.Value.High < planned.Value.Value / Math.Max(1, dosing.Planned.Count)))
            {
                (last, why) = (dosing.Since.Visit.At, BiocideGap.DidNotRun);
                missed += dosing.Planned.Count;
                at = dosing.Since;
                continue;
            }

            if (FeedParts.IsEmpty(at.Drum(feed.Drum)) == true)
            {
                if (FeedParts.IsEmpty(dosing.Since.Drum(feed.Drum)) == true && dosing.Since.Drum(feed.Drum)!.Change == 0)
                {
                    (last, why) = (dosing.Since.Visit.At, BiocideGap.Empty);
                    missed += dosing.Planned.Count;
                    at = dosing.Since;
                    continue;
                }

                var (emptyFrom, isSure) = EmptyFrom(at, dosing, feed);
                return isSure ? new(feed.Drum, product.Name, emptyFrom, BiocideGap.Empty)
                    : missed > 0 ? new(feed.Drum, product.Name, last, why) : Unknown(feed, product);
            }

            break;
        }

        // Some dose ran in the stretch before: the last one planned there may have been it. Between two doses of the plan nothing lapses.
        if (why == BiocideGap.Unknown || missed == 0)
        {
            return new(feed.Drum, product.Name, visit.Visit.At, BiocideGap.Works);
        }

        var before = PlannedRuns.Of(visit.History, feed.Drum, last.AddDays(-28), last);
        return new(feed.Drum, product.Name, before.Count > 0 ? before[^1].Start : last, why);
    }

    // A display in tenths may hide a short dose: not one whole dose ran, or nothing was counted where tenths should have been.
    private static bool IsNone(double? ran, PlannedDosing dosing) =>
        ran is { } hours && (dosing.Planned.Count == 0 ? hours <= NoHours : hours + NoHours < dosing.HoursOfOne || (hours < NoHours / 2 && dosing.HoursPlanned > 2 * NoHours));

    private static (DateTime From, bool IsSure) EmptyFrom(VisitFacts at, PlannedDosing dosing, Feed feed)
    {
        if (dosing.Planned.Count == 0)
        {
            return (dosing.Since.Visit.At, true);
        }

        if (dosing.Since.Drum(feed.Drum) is not { Left: { HasValue: true, Value: var left } } then || at.Drum(feed.Drum) is not { } now
            || ProductUse.AmountOf(at, now, feed) is not { HasValue: true, Value: var one } || one.Value <= 0)
        {
            return (at.Visit.At, false);
        }

        // The upper end of the stock: the last dose that it may have been enough for, in part.
        var enough = (int)Math.Ceiling(Math.Max(0, DrumVolume.Usable(left, then.Drum).High) / one.Value);
        return (enough == 0 ? dosing.Since.Visit.At : dosing.Planned[Math.Min(enough, dosing.Planned.Count) - 1].Start, true);
    }

    // Poured on a rhythm of its own, which three gaps show: it lapses when half as long again has passed.
    private static BiocideCover ByHand(VisitFacts visit, Feed feed, Product product)
    {
        var poured = visit.Back().TakeWhile(v => (visit.Visit.At - v.Visit.At).TotalDays <= 180)
            .SelectMany(v => v.Record.Additions.Where(a => FeedParts.Same(a.Product, product.Code)).Select(a => (a.At ?? v.Visit.Visit.Arrived).Utc))
            .Order()
            .ToList();
        if (poured.Count < 4)
        {
            return Unknown(feed, product);
        }

        var usual = Statistics.Median([.. poured.Zip(poured.Skip(1), (a, b) => (b - a).TotalDays)]);
        return (visit.Visit.At - poured[^1]).TotalDays > 1.5 * usual
            ? new(feed.Drum, product.Name, poured[^1], BiocideGap.NotPoured)
            : new(feed.Drum, product.Name, visit.Visit.At, BiocideGap.Works);
    }

    // Fed by demand: without residual at a visit, and at those before it, it worked at the latest before the first of them.
    private static BiocideCover ByResidual(VisitFacts visit, Feed feed, Product product)
    {
        var test = FeedParts.ResidualTest(visit, product);
        var still = NotRunSince(visit, feed);
        if (test is not null && HasResidual(visit, test) is { } has)
        {
            var first = has ? null : visit.Back().Take(Reach).TakeWhile(v => HasResidual(v, test) != true).LastOrDefault(v => HasResidual(v, test) == false);
            return first is null
                ? new(feed.Drum, product.Name, visit.Visit.At, BiocideGap.Works)
                : new(feed.Drum, product.Name, still is { } since && since < first.Visit.At ? since : first.Visit.At, BiocideGap.NoResidual);
        }

        return still is { } stopped
            ? new(feed.Drum, product.Name, stopped, BiocideGap.DidNotRun)
            : FeedParts.OutputOf(visit, feed.Drum) is { } output && visit.HoursRun(output).HasValue && FeedParts.IsEmpty(visit.Drum(feed.Drum)) == false
                ? new(feed.Drum, product.Name, visit.Visit.At, BiocideGap.Works)
                : Unknown(feed, product);
    }

    private static DateTime? NotRunSince(VisitFacts visit, Feed feed)
    {
        var output = FeedParts.OutputOf(visit, feed.Drum);
        DateTime? last = null;
        var at = visit;
        while (output is not null && at.HoursRun(output) is { HasValue: true, Value.Value: <= NoHours } && at.HoursSince(output) is { } since)
        {
            last = since.Visit.At;
            at = since;
        }

        return last;
    }

    private static bool? HasResidual(VisitFacts visit, string test)
    {
        if (visit.TowerReading(test) is not { } result)
        {
            return null;
        }

        var range = visit.Programme?.Ranges.FirstOrDefault(r => FeedParts.Same(r.Test, test) && FeedParts.Same(r.At, SamplePoints.Tower));
        var low = range?.Low is { } number && Units.Convert(number, range.Unit, result.Value.Unit) is { HasValue: true, Value: var converted } ? converted : 0;
        return low > 0 ? result.Value.High >= low : result.Value.Low > 0;
    }
}
