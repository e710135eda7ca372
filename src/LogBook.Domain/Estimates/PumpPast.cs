using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>What the visits up to one tell about a pump at one stroke and speed.</summary>
/// <param name="Start">Visit from which stroke, speed and pump are the same and the drum never ran dry.</param>
/// <param name="FirstDrawdown">First drawdown since then, L/h, or null.</param>
/// <param name="Early">Output over the first visits since then, L/h, or null before there are enough.</param>
/// <param name="EarlyUntil">Visit at which <paramref name="Early"/> ends, or null.</param>
internal sealed record PumpPast(VisitFacts Start, Estimate? FirstDrawdown, Estimate? Early, VisitFacts? EarlyUntil)
{
    // Five visits, and a drop in which two levels weigh about 3 %: a mean of the early output beats any single window.
    private const int EarlyVisits = 5;
    private const double EarlyLevelUncertainties = 48;

    // One over a value that may as well be half or double is no straight line any more.
    private const double MostUncertain = 0.2;

    private int Visits { get; init; }

    /// <summary>Works out the past from that of the visit before.</summary>
    /// <param name="visit">The visit; what changed at it counts from the next one on.</param>
    /// <param name="pump">The pump.</param>
    /// <returns>The past.</returns>
    public static PumpPast Of(VisitFacts visit, Pump pump)
    {
        if (visit.Previous is not { } previous || IsStart(previous, pump))
        {
            var start = visit.Previous ?? visit;
            return new PumpPast(start, visit.Previous is null || !IsRenewed(start, pump) ? DrawdownOf(visit, pump) ?? DrawdownOf(start, pump) : DrawdownOf(visit, pump), null, null) { Visits = 1 };
        }

        var past = previous.PumpPast(pump);
        past = past with { Visits = past.Visits + 1, FirstDrawdown = past.FirstDrawdown ?? DrawdownOf(visit, pump) };
        return past.Early is null && past.Visits >= EarlyVisits && EarlyOf(past.Start, visit, pump) is { } early
            ? past with { Early = early, EarlyUntil = visit }
            : past;
    }

    /// <summary>What the output should be: the first drawdown or the early output, whichever is known better; null before there is either.</summary>
    public (Estimate LitresPerHour, PumpBasis Basis)? Own => (FirstDrawdown, Early) switch
    {
        ({ } column, { } early) when Relative(early) < Relative(column) => (early, PumpBasis.Early),
        ({ } column, _) when Tells(column) => (column, PumpBasis.Drawdown),
        (_, { } early) => (early, PumpBasis.Early),
        _ => null,
    };

    /// <summary>A drawdown of a visit, L/h; the last one where there are several.</summary>
    /// <remarks>Columns are read to whole or half millilitres: half a step comes on top, or a small pump seems to jump by a third.</remarks>
    public static Estimate? DrawdownOf(VisitFacts visit, Pump pump)
    {
        if (visit.Record.Drawdowns.LastOrDefault(d => FeedParts.Same(d.Pump, pump.Code)) is not { Millilitres: >= 0, Seconds: > 0 } drawdown)
        {
            return null;
        }

        var toLitresPerHour = 3.6 / drawdown.Seconds;
        var share = visit.History.Firm.Engine.Uncertainties.Share(UncertaintyCodes.PumpDrawdown) * drawdown.Millilitres;
        var halfStep = drawdown.Millilitres == Math.Round(drawdown.Millilitres) ? 0.5 : 0.25;
        return new Estimate(drawdown.Millilitres * toLitresPerHour, "L/h", Math.Sqrt((share * share) + (halfStep * halfStep)) * toLitresPerHour);
    }

    /// <summary>Whether an output is known well enough to be a measure for others.</summary>
    /// <param name="output">L/h.</param>
    public static bool Tells(Estimate output) => Relative(output) <= MostUncertain;

    private static double Relative(Estimate estimate) => estimate.Value > 0 ? estimate.StandardUncertainty / estimate.Value : double.PositiveInfinity;

    private static Estimate? EarlyOf(VisitFacts start, VisitFacts visit, Pump pump)
    {
        if (visit.Drum(pump.Drum) is not { Found.HasValue: true } drum
            || ProductUse.UsedBetween(start, visit, pump.Drum) is not { HasValue: true, Value: var used }
            || used.Value < EarlyLevelUncertainties * drum.Found.Value.StandardUncertainty)
        {
            return null;
        }

        var hours = HoursSum.Between(start, visit, pump.Output);
        return hours is { HasValue: true, Value.Value: > 0 } ? used.Over(hours.Value, "L/h") : null;
    }

    // Something at or before this visit makes what came before another pump, another setting or a dry suction.
    private static bool IsStart(VisitFacts visit, Pump pump) =>
        IsRenewed(visit, pump)
        || visit.Record.Pumps.Any(p => FeedParts.Same(p.Pump, pump.Code) && (Differs(p.StrokeFound, p.StrokeLeft) || Differs(p.SpeedFound, p.SpeedLeft) || FoundOtherwise(visit, p)))
        || FeedParts.IsEmpty(visit.Drum(pump.Drum)) == true
        || visit.Drum(pump.Drum) is { Left.HasValue: false };

    private static bool IsRenewed(VisitFacts visit, Pump pump) =>
        visit.Record.Events.Any(e => e.Type == EventType.PumpRenewed && (e.Of is null || FeedParts.Same(e.Of, pump.Code) || FeedParts.Same(e.Of, pump.Output) || FeedParts.Same(e.Of, pump.Drum)))
        || (pump.From is { } from && from <= visit.Day && (visit.Previous is not { } previous || previous.Day < from));

    /// <summary>Whether a pump was found at another stroke or speed than it was last left at.</summary>
    public static bool FoundOtherwise(VisitFacts visit, PumpReading reading)
    {
        var earlier = visit.Previous;
        for (var i = 0; i < 30 && earlier is not null; i++, earlier = earlier.Previous)
        {
            var pumps = earlier.Record.Pumps;
            for (var j = pumps.Count - 1; j >= 0; j--)
            {
                if (FeedParts.Same(pumps[j].Pump, reading.Pump))
                {
                    var before = pumps[j];
                    return Differs(before.StrokeLeft ?? before.StrokeFound, reading.StrokeFound) || Differs(before.SpeedLeft ?? before.SpeedFound, reading.SpeedFound);
                }
            }
        }

        return false;
    }

    private static bool Differs(double? a, double? b) => a is { } x && b is { } y && Math.Abs(x - y) > 0.5;
}
