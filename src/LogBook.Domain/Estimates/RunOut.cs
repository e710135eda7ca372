using LogBook.Domain.Drums;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Estimates;

/// <summary>When a drum runs empty, from what it holds and what it has used lately.</summary>
/// <param name="Drum">The drum as left at the visit.</param>
/// <param name="Stock">What the pump can still draw, with the spare on site, L.</param>
/// <param name="UsePerDay">Use a day, L/d.</param>
/// <param name="DaysToEmpty">Days from the visit until it is empty, d.</param>
public sealed record RunOut(DrumFacts Drum, Estimate Stock, Computed<Estimate> UsePerDay, Computed<Estimate> DaysToEmpty)
{
    private const double LongestDays = 70;
    private const double LevelUncertainties = 6;

    // Load and season of the coming weeks against those of the last ones; common practice, no citable source.
    private const double SeasonShare = 0.15;

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
                var use = drum.Found.HasValue ? UsePerDayOf(visit, drum.Drum.Code) : Computed<Estimate>.None(VisitReasons.NotMeasured);
                all.Add(new RunOut(drum, stock, use, use.Map(perDay => stock.Over(perDay, "d"))));
            }
        }

        return all;
    }

    /// <summary>Chance that the drum is empty after so many days.</summary>
    /// <param name="days">Days from the visit.</param>
    /// <returns>0 to 1; zero where its use is not known.</returns>
    /// <remarks>Stock and use are taken as normal: empty when use × days exceeds stock.</remarks>
    public double ChanceEmptyAfter(double days)
    {
        if (!UsePerDay.HasValue)
        {
            return 0;
        }

        var margin = UsePerDay.Value.Scaled(days, "L").Minus(Stock);
        return margin.StandardUncertainty == 0 ? (margin.Value >= 0 ? 1 : 0) : Statistics.Normal(margin.Value / margin.StandardUncertainty);
    }

    // The shortest stretch whose use stands out of the level's own uncertainty, else the longest up to 70 days.
    private static Computed<Estimate> UsePerDayOf(VisitFacts visit, string code)
    {
        Computed<Estimate> best = Computed<Estimate>.None(VisitReasons.NoUse);
        foreach (var from in visit.Back().Skip(1).TakeWhile(v => (visit.Visit.At - v.Visit.At).TotalDays <= LongestDays))
        {
            var days = (visit.Visit.At - from.Visit.At).TotalDays;
            if (days < 1 || ProductUse.UsedBetween(from, visit, code) is not { HasValue: true, Value: var used })
            {
                continue;
            }

            if (used.Value > used.ExpandedUncertainty)
            {
                best = Computed<Estimate>.Of(PerDay(used, days));
            }

            if (used.Value >= LevelUncertainties * used.StandardUncertainty)
            {
                break;
            }
        }

        return best;
    }

    private static Estimate PerDay(Estimate used, double days)
    {
        var perDay = used.Scaled(1 / days, "L/d");
        var season = SeasonShare * perDay.Value;
        return new Estimate(perDay.Value, perDay.Unit, Math.Sqrt((perDay.Random * perDay.Random) + (season * season)), perDay.Common);
    }
}
