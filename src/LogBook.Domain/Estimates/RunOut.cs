using LogBook.Domain.Clocks;
using LogBook.Domain.Drums;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>When a drum runs empty, from what it holds and what it has used lately.</summary>
/// <param name="Drum">The drum as left at the visit.</param>
/// <param name="Stock">What the pump can still draw, with the spare on site, L.</param>
/// <param name="UsePerDay">Use a day of running, L/d.</param>
/// <param name="DaysToEmpty">Days of running from the visit until it is empty, d.</param>
public sealed record RunOut(DrumFacts Drum, Estimate Stock, Computed<Estimate> UsePerDay, Computed<Estimate> DaysToEmpty)
{
    private const double LongestDays = 70;
    private const double LevelUncertainties = 8.5;

    // A calendar dose does not follow the load, so that a stretch twice as telling costs nothing: one level weighs half as much in it.
    private const double LevelUncertaintiesOfDoses = 17;

    // Load and season of the coming weeks against those of the last ones; common practice, no citable source.
    private const double SeasonShare = 0.15;

    // A calendar dose does not follow the load: what is left is the pump's own scatter.
    private const double DoseShare = 0.05;

    /// <summary>Product used in the stretch that the use a day comes from, L; null where the use is not known.</summary>
    public Estimate? Used { get; private init; }

    /// <summary>Days of running in that stretch, d; null where doses are counted instead.</summary>
    public double? UsedDays { get; private init; }

    /// <summary>Doses planned in that stretch; null where days are counted.</summary>
    public int? UsedDoses { get; private init; }

    /// <summary>Doses planned in the seventy days after the visit; null where days are counted.</summary>
    public int? DosesAhead => Doses?.StartDays.Count;

    /// <summary>Litres of one planned dose and the days from the visit to each planned start; null for other feeds.</summary>
    private (Estimate PerDose, IReadOnlyList<double> StartDays)? Doses { get; init; }

    /// <summary>Works out the run-out of every drum whose volume is known after the visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>One entry for each drum.</returns>
    public static IReadOnlyList<RunOut> Of(VisitFacts visit)
    {
        var all = new List<RunOut>();
        foreach (var drum in visit.Drums)
        {
            if (drum.Left is { HasValue: true, Value: var left })
            {
                var spare = drum.Reading.SpareL ?? drum.Drum.SpareL ?? 0;
                var stock = DrumVolume.Usable(left, drum.Drum).Plus(Estimate.Exact(spare, "L"));
                all.Add(!drum.Found.HasValue ? new RunOut(drum, stock, Computed<Estimate>.None(VisitReasons.NotMeasured), Computed<Estimate>.None(VisitReasons.NotMeasured))
                    : DosesOf(visit, drum.Drum.Code) is { StartDays.Count: > 0 } planned
                        ? Lasting(drum, stock, Computed<Estimate>.Of(planned.PerDose.Scaled(planned.StartDays.Count / LongestDays, "L/d")), planned.Used) with
                        {
                            Doses = (planned.PerDose, planned.StartDays),
                            UsedDoses = planned.Doses,
                        }
                        : UsePerDayOf(visit, drum, stock));
            }
        }

        return all;
    }

    /// <summary>Chance that the drum is empty after so many days.</summary>
    /// <param name="days">Days from the visit.</param>
    /// <param name="running">Days of running among them: a plant at rest uses nothing.</param>
    /// <returns>0 to 1; zero where its use is not known.</returns>
    /// <remarks>Stock and use are taken as normal: empty when the use in that time, by the planned doses or by days, exceeds the stock.</remarks>
    public double ChanceEmptyAfter(double days, double running)
    {
        if (!UsePerDay.HasValue)
        {
            return 0;
        }

        // A dose that falls on the last day counts: it may come before the visit.
        var use = Doses is { } doses ? doses.PerDose.Scaled(StartsUpTo(doses.StartDays, days + 0.5), "L") : UsePerDay.Value.Scaled(running, "L");
        var margin = use.Minus(Stock);
        return margin.StandardUncertainty == 0 ? (margin.Value >= 0 ? 1 : 0) : Statistics.Normal(margin.Value / margin.StandardUncertainty);
    }

    private static RunOut Lasting(DrumFacts drum, Estimate stock, Computed<Estimate> use, Estimate? used) =>
        new(drum, stock, use, use.Map(perDay => stock.Over(perDay, "d"))) { Used = used };

    private static int StartsUpTo(IReadOnlyList<double> startDays, double days)
    {
        var count = 0;
        while (count < startDays.Count && startDays[count] <= days)
        {
            count++;
        }

        return count;
    }

    // Use between two visits over the doses planned between them, from the shortest stretch that tells.
    private static (Estimate PerDose, IReadOnlyList<double> StartDays, Estimate Used, int Doses)? DosesOf(VisitFacts visit, string code)
    {
        if (visit.Programme is not { } programme
            || FeedParts.FeedOf(visit, code) is not { Mode: FeedMode.DosePlan } feed)
        {
            return null;
        }

        var (best, doses) = ((VisitFacts?)null, 0);
        for (var from = visit.Previous; from is not null && (visit.Visit.At - from.Visit.At).TotalDays <= LongestDays && from.Programme?.From == programme.From; from = from.Previous)
        {
            var planned = ProductUse.RunningStartsCount(visit, feed, from.Visit.At, visit.Visit.At);
            if (planned == 0 || ProductUse.LitresBetween(from, visit, code) is not { } used)
            {
                continue;
            }

            if (used.Litres > 2 * used.StandardUncertainty)
            {
                (best, doses) = (from, planned);
            }

            if (used.Litres >= LevelUncertaintiesOfDoses * used.StandardUncertainty)
            {
                break;
            }
        }

        if (best is null)
        {
            return null;
        }

        var taken = ProductUse.UsedBetween(best, visit, code).Value;
        return (PerDose(taken, doses), [.. ProductUse.RunningStarts(visit, feed, visit.Visit.At, visit.Visit.At.AddDays(LongestDays)).Select(start => (start - visit.Visit.At).TotalDays)], taken, doses);
    }

    // The shortest stretch whose use stands out of the level's own uncertainty, else the longest up to 70 days.
    private static RunOut UsePerDayOf(VisitFacts visit, DrumFacts drum, Estimate stock)
    {
        var code = drum.Drum.Code;
        var (best, bestDays) = ((VisitFacts?)null, 0.0);
        for (var from = visit.Previous; from is not null && (visit.Visit.At - from.Visit.At).TotalDays <= LongestDays; from = from.Previous)
        {
            // Days of a stop on file count for nothing, here and in what is foreseen.
            var days = (visit.Visit.At - from.Visit.At).TotalDays - (visit.Day.DayNumber - from.Day.DayNumber) + OperatingDays.Between(visit.History.System.Operation, from.Day, visit.Day);
            if (days < 1 || ProductUse.LitresBetween(from, visit, code) is not { } used)
            {
                continue;
            }

            if (used.Litres > 2 * used.StandardUncertainty)
            {
                (best, bestDays) = (from, days);
            }

            if (used.Litres >= LevelUncertainties * used.StandardUncertainty)
            {
                break;
            }
        }

        if (best is null)
        {
            return Lasting(drum, stock, Computed<Estimate>.None(VisitReasons.NoUse), null);
        }

        var taken = ProductUse.UsedBetween(best, visit, code).Value;
        return Lasting(drum, stock, Computed<Estimate>.Of(PerDay(taken, bestDays)), taken) with { UsedDays = bestDays };
    }

    private static Estimate PerDose(Estimate used, int doses)
    {
        var dose = used.Scaled(1.0 / doses);
        return dose.WithRandom(Math.Sqrt((dose.Random * dose.Random) + (DoseShare * dose.Value * DoseShare * dose.Value)));
    }

    private static Estimate PerDay(Estimate used, double days)
    {
        var perDay = used.Scaled(1 / days, "L/d");
        var season = SeasonShare * perDay.Value;
        return perDay.WithRandom(Math.Sqrt((perDay.Random * perDay.Random) + (season * season)));
    }
}
