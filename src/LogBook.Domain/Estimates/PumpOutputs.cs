using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Estimates;

/// <summary>Output of a feed pump from the drop of its drum per hour run, at one stroke and speed.</summary>
/// <param name="Pump">The pump.</param>
/// <param name="Since">Visit at which the stretch begins.</param>
/// <param name="Used">Drop of the drum, L.</param>
/// <param name="Hours">Hours run, h.</param>
/// <param name="LitresPerHour">Output, L/h.</param>
/// <param name="Rated">Output by rating, L/h, or null.</param>
public sealed record PumpOutputs(Pump Pump, VisitFacts Since, Computed<Estimate> Used, Computed<Estimate> Hours, Computed<Estimate> LitresPerHour, Estimate? Rated)
{
    private const double LongestDays = 150;
    private const double LevelUncertainties = 12;

    // A stretch shorter than this part of one that tells would be all level and no use.
    private const double BesideShare = 0.4;

    /// <summary>What the output should be by the pump's own past, L/h: its first drawdown, else its early output; null before there is either.</summary>
    public Estimate? Own { get; private init; }

    /// <summary>Output over a stretch twice as telling, L/h, or null where there is none: what it does not bear out was a level that slipped.</summary>
    public Estimate? Longer { get; private init; }

    /// <summary>Mean output over the stretches that begin one reading earlier and one later, L/h; null where there is neither: what they do not bear out was the level that they all begin with.</summary>
    public double? Beside { get; private init; }

    /// <summary>Which of both <see cref="Own"/> is.</summary>
    public PumpBasis OwnBasis { get; private init; }

    /// <summary>Works out the output of every pump whose drum and hours the visit read.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>
    /// One entry for each, over the shortest stretch in which the pump should have moved at least twelve times the uncertainty of one
    /// level. None for a drum at its heel: a pump that runs dry tells nothing of its output.
    /// </returns>
    public static IReadOnlyList<PumpOutputs> Of(VisitFacts visit)
    {
        var all = new List<PumpOutputs>();
        foreach (var code in visit.History.PumpedDrums)
        {
            if (FeedParts.PumpOf(visit, code) is { } pump
                && visit.Drum(code) is { Found: { HasValue: true, Value: var level } } drum
                && FeedParts.IsEmpty(drum) == false
                && Of(visit, pump, level.StandardUncertainty) is { } output)
            {
                all.Add(output);
            }
        }

        return all;
    }

    private static PumpOutputs? Of(VisitFacts visit, Pump pump, double ofLevel)
    {
        // Found at another setting than last left: since when is not known.
        foreach (var reading in visit.Record.Pumps)
        {
            if (FeedParts.Same(reading.Pump, pump.Code) && PumpPast.FoundOtherwise(visit, reading))
            {
                return null;
            }
        }

        var past = visit.PumpPast(pump);
        var rated = ProductUse.PumpRate(visit, pump.Drum);
        var own = past.Own;
        var should = own?.LitresPerHour ?? rated;
        var earliest = own is { Basis: PumpBasis.Early } && past.EarlyUntil is { } until && until != visit ? until : past.Start;
        var (first, hours, steps) = ((Estimate?)null, 0.0, 0);
        PumpOutputs? window = null;
        var (later, earlier) = ((double?)null, (double?)null);
        var at = visit;
        while (at != earliest && at.HoursRun(pump.Output) is { HasValue: true, Value: var run } && at.HoursSince(pump.Output) is { } since
            && since.Visit.At >= earliest.Visit.At
            && !since.IsDoubted
            && (visit.Visit.At - since.Visit.At).TotalDays <= LongestDays)
        {
            // Readings of one counter cancel: a step of the display at either end, however many lie between.
            first ??= run;
            hours = steps++ == 0 ? run.Value : hours + run.Value;
            at = since;
            var needed = (window is null ? 1 : 2) * LevelUncertainties * ofLevel;
            var isLong = should is null || hours * should.Value >= needed;
            if (!isLong && (window is null ? hours * should!.Value < BesideShare * needed : earlier is not null))
            {
                continue;
            }

            if (hours > 0 && ProductUse.LitresBetween(at, visit, pump.Drum) is { Litres: var litres })
            {
                if (window is null && should is not null && !isLong)
                {
                    later = litres / hours;
                    continue;
                }

                earlier ??= window is null ? null : litres / hours;
                if (!isLong || (should is null && litres < needed))
                {
                    continue;
                }

                var used = ProductUse.UsedBetween(at, visit, pump.Drum).Value;
                var counted = steps == 1 ? first : new Estimate(hours, "h", first.Random);
                if (window is not null)
                {
                    return window with { Longer = used.Over(counted, "L/h"), Beside = Mean(later, earlier) };
                }

                window = new PumpOutputs(pump, at, Computed<Estimate>.Of(used), Computed<Estimate>.Of(counted), Computed<Estimate>.Of(used.Over(counted, "L/h")), rated)
                {
                    // An early output that the stretch itself is part of cannot judge it.
                    Own = own is { Basis: PumpBasis.Early } && (past.EarlyUntil is not { } end || end.Visit.At > at.Visit.At) ? null : own?.LitresPerHour,
                    OwnBasis = own?.Basis ?? PumpBasis.Rating,
                };
            }
        }

        return window is null ? null : window with { Beside = Mean(later, earlier) };
    }

    private static double? Mean(double? a, double? b) => a is { } x && b is { } y ? (x + y) / 2 : a ?? b;
}
