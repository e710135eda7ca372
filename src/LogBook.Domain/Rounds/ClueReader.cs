using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Rounds;

/// <summary>Reads from the facts of a visit what concerns meters, lots and people.</summary>
internal static class ClueReader
{
    private const int UseBaseline = 5;
    private const int LongestLookBack = 40;

    // Mean residence times after which the water is what was fed since.
    private const double RenewedIn = 2;

    public static VisitClues Of(VisitFacts visit, FindingThresholds thresholds)
    {
        var clues = new VisitClues(visit.Visit.Visit.Id, visit.Visit.At, visit.Visit.Visit.Technician) { Signs = visit.Signs };

        // What may have been made up tells nothing about a meter or a lot.
        return SecondLookSigns.Suffice(clues.Signs) ? clues : clues with { Probes = [.. Probes(visit, thresholds)], Lots = [.. Lots(visit)] };
    }

    private static IEnumerable<ProbeClue> Probes(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var probe in visit.Probes)
        {
            if (probe.Instrument is not { } meter || !probe.ErrorFound.HasValue || visit.Record.Running == false || probe.Reading.SettledMin < thresholds.SettledMinutes.Value)
            {
                continue;
            }

            var found = probe.ErrorFound.Value;
            var left = probe.ErrorLeft.HasValue ? probe.ErrorLeft.Value.Value : probe.ErrorCleaned.HasValue ? probe.ErrorCleaned.Value.Value : found.Value;
            yield return new ProbeClue(probe.Probe, meter, found.Value, probe.Restarts ? left - found.Value : 0, found.Random, probe.Reading.Calibrated == true);
        }
    }

    private static IEnumerable<LotClue> Lots(VisitFacts visit)
    {
        if (visit.Unsettled is not null)
        {
            yield break;
        }

        for (var i = 0; i < visit.Tests.Count; i++)
        {
            var test = visit.Tests[i].Reading.Test;
            if (IsFirstOfTower(visit.Tests, i) && Residuals.IsResidual(visit, test) && visit.TowerReading(test) is { IsCensored: false, Value.Value: > 0 } result)
            {
                var (fed, basis) = Fed(visit, test);
                var own = result.Value.StandardUncertainty / result.Value.Value;
                var ofBasis = fed.StandardUncertainty == 0 ? 0 : fed.Random / fed.Value;
                yield return new LotClue(test, result.Reading.Lot, result.Value.Value / fed.Value, basis, 100 * Math.Sqrt((own * own) + (ofBasis * ofBasis)), UseSide(visit, test));
            }
        }
    }

    private static bool IsFirstOfTower(IReadOnlyList<TestResult> tests, int place)
    {
        if (!IsOfTower(tests[place]))
        {
            return false;
        }

        for (var i = 0; i < place; i++)
        {
            if (IsOfTower(tests[i]) && FeedParts.Same(tests[i].Reading.Test, tests[place].Reading.Test))
            {
                return false;
            }
        }

        return true;
    }

    private static bool IsOfTower(TestResult result) => FeedParts.Same(result.Reading.At, SamplePoints.Tower);

    // Season and load change what a feed gives: hours fed over the water lost since the last visit tell most, where the water has been
    // renewed since; a feed by make-up follows the cycles.
    private static (Estimate Fed, string Basis) Fed(VisitFacts visit, string test)
    {
        var feed = FeedShownBy(visit, test);
        if (feed?.Output is { } output && visit.HoursRun(output) is { HasValue: true, Value: { Value: > 0 } hours } && visit.Balance.LiquidLoss is { HasValue: true, Value: { Value: > 0 } lost }
            && visit.HoursSince(output) == visit.Water.Since && visit.Water.Since is { } since && (visit.Visit.At - since.Visit.At).TotalDays >= RenewedIn * visit.FadingDays)
        {
            return (hours.Over(lost, "h/L"), "hours");
        }

        return feed?.Mode == FeedMode.ByMakeUpVolume && visit.Cycles.Best is { HasValue: true, Value: { Value: > 0 } cycles } ? (cycles, "cycles") : (Estimate.Exact(1), "");
    }

    private static Feed? FeedShownBy(VisitFacts visit, string test)
    {
        foreach (var feed in visit.FeedsInForce)
        {
            foreach (var drum in visit.History.Drums)
            {
                if (FeedParts.Same(drum.Code, feed.Drum) && FeedParts.Same(test, FeedParts.ProductOf(visit, drum.Product)?.Residual?.Test))
                {
                    return feed;
                }
            }
        }

        return null;
    }

    // Compared with the site's own usual ratio: volumes and valve flows on file may be off for good.
    private static int UseSide(VisitFacts visit, string test)
    {
        var now = visit.UseRatio(test);
        if (now is null)
        {
            return 0;
        }

        Span<double> before = stackalloc double[LongestLookBack];
        var count = 0;
        var at = visit.Previous;
        for (var i = 0; i < LongestLookBack && at is not null; i++, at = at.Previous)
        {
            if (at.UseRatio(test) is { } ratio)
            {
                before[count++] = ratio.Value;
            }
        }

        var usual = count >= UseBaseline ? Statistics.MedianInPlace(before[..count]) : 1;
        return now.Low > usual ? 1 : now.High < usual ? -1 : 0;
    }
}
