using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Estimates;

/// <summary>Output of a feed pump from the drop of its drum per hour run.</summary>
/// <param name="Pump">The pump.</param>
/// <param name="Since">Visit at which the stretch begins.</param>
/// <param name="Used">Drop of the drum, L.</param>
/// <param name="Hours">Hours run, h.</param>
/// <param name="LitresPerHour">Output, L/h.</param>
/// <param name="Rated">Output by rating, L/h, or null.</param>
public sealed record PumpOutputs(Pump Pump, VisitFacts Since, Computed<Estimate> Used, Computed<Estimate> Hours, Computed<Estimate> LitresPerHour, Estimate? Rated)
{
    private const double LongestDays = 120;
    private const double LevelUncertainties = 12;

    /// <summary>Works out the output of every pump whose drum and hours the visit read.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>One entry for each, over the shortest stretch whose drop is at least twelve times the uncertainty of one level.</returns>
    public static IReadOnlyList<PumpOutputs> Of(VisitFacts visit)
    {
        var all = new List<PumpOutputs>();
        foreach (var pump in visit.History.System.Pumps)
        {
            if (visit.Drum(pump.Drum) is { Found: { HasValue: true, Value: var level } } && Of(visit, pump, level.StandardUncertainty) is { } output)
            {
                all.Add(output);
            }
        }

        return all;
    }

    private static PumpOutputs? Of(VisitFacts visit, Pump pump, double ofLevel)
    {
        Estimate? hours = null;
        var at = visit;
        while (at.HoursRun(pump.Output) is { HasValue: true, Value: var run } && at.HoursSince(pump.Output) is { } since
            && (visit.Visit.At - since.Visit.At).TotalDays <= LongestDays)
        {
            hours = hours is null ? run : hours.Plus(run);
            at = since;
            if (ProductUse.UsedBetween(at, visit, pump.Drum) is { HasValue: true, Value: var used } && hours.Value > 0 && used.Value >= LevelUncertainties * ofLevel)
            {
                return new PumpOutputs(
                    pump,
                    at,
                    Computed<Estimate>.Of(used),
                    Computed<Estimate>.Of(hours),
                    Computed<Estimate>.Of(used.Over(hours, "L/h")),
                    ProductUse.PumpRate(visit, pump.Drum));
            }
        }

        return null;
    }
}
