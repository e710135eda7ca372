using LogBook.Domain.Estimates;
using LogBook.Domain.Sites;
using LogBook.Domain.Trends;

namespace LogBook.Domain.Records;

/// <summary>A feed pump over time: what it moves for each hour run, against its plate and its own past.</summary>
/// <param name="Pump">The pump.</param>
/// <param name="Points">Visits that tell something of it, oldest first.</param>
/// <param name="TrendPerMonth">
/// Slope of the output by the drum at one stroke and speed, mL/h in 30 days, from stretches that do not overlap; null below four of them.
/// </param>
/// <param name="TrendHalfWidth">Half of its 95 % interval; null without a slope.</param>
/// <param name="TrendPoints">Stretches it rests on.</param>
public sealed record PumpRecord(Pump Pump, IReadOnlyList<PumpPoint> Points, double? TrendPerMonth, double? TrendHalfWidth, int TrendPoints)
{
    private const int LeastPoints = 4;

    /// <summary>The trend with its 95 % interval, mL/h in 30 days; null where there is none.</summary>
    public (double Slope, double Low, double High)? Trend => TrendPerMonth is { } slope && TrendHalfWidth is { } half ? (slope, slope - half, slope + half) : null;

    /// <summary>Output by the rating on file, mL/h; null where there is none.</summary>
    public double? PlateMillilitresPerHour => 1000 * Pump.RatedLPerH;

    private const double Month = 30;

    /// <summary>The records of all pumps of a system.</summary>
    /// <param name="latest">Facts of the newest visit; null where there was none.</param>
    /// <returns>One record for each pump on file that any visit tells of, by code.</returns>
    public static IReadOnlyList<PumpRecord> Of(VisitFacts? latest)
    {
        if (latest is null)
        {
            return [];
        }

        var visits = latest.Back().Reverse().ToList();
        return
        [
            .. latest.History.System.Pumps.GroupBy(pump => pump.Code, StringComparer.OrdinalIgnoreCase).Select(versions => versions.MaxBy(pump => pump.From ?? DateOnly.MinValue)!).OrderBy(pump => pump.Code, StringComparer.OrdinalIgnoreCase)
                .Select(pump => Of(latest, visits, pump)).Where(record => record.Points.Count > 0),
        ];
    }

    private static PumpRecord Of(VisitFacts latest, List<VisitFacts> visits, Pump pump)
    {
        var told = visits.Select(visit => (visit, point: PointOf(visit, pump))).Where(pair => pair.point.ByDrum is not null || pair.point.ByDrawdown is not null).ToList();
        var (slope, half, count) = TrendOf(latest, pump, [.. told.Where(pair => pair.point.MillilitresPerHour is not null)]);
        return new PumpRecord(pump, [.. told.Select(pair => pair.point)], slope, half, count);
    }

    private static PumpPoint PointOf(VisitFacts visit, Pump pump)
    {
        var byDrum = visit.PumpOutputs.FirstOrDefault(output => output.Pump.Code.Equals(pump.Code, StringComparison.OrdinalIgnoreCase) && output.LitresPerHour.HasValue);
        Estimate? Against(Estimate? should) => byDrum is not null && should is { Value: > 0 } ? byDrum.LitresPerHour.Value.Over(should).Minus(Estimate.Exact(1)).Scaled(100, "%") : null;
        return new PumpPoint(visit.Visit.At, visit.Visit.Visit.Id, byDrum, PumpPast.DrawdownOf(visit, pump), Against(byDrum?.Own), Against(byDrum?.Rated));
    }

    // Windows of neighbouring visits share most of their litres: only those that follow each other count as points of a line.
    private static (double? Slope, double? HalfWidth, int Count) TrendOf(VisitFacts latest, Pump pump, List<(VisitFacts Visit, PumpPoint Point)> told)
    {
        var start = latest.PumpPast(pump).Start.Visit.At;
        var points = new List<(double Days, double Value)>();
        var free = DateTime.MaxValue;
        for (var i = told.Count - 1; i >= 0; i--)
        {
            var (visit, point) = told[i];
            if (visit.Visit.At <= free && point.ByDrum!.Since.Visit.At >= start)
            {
                points.Add(((visit.Visit.At - start).TotalDays, point.MillilitresPerHour!.Value));
                free = point.ByDrum.Since.Visit.At;
            }
        }

        if (points.Count < LeastPoints)
        {
            return (null, null, points.Count);
        }

        points.Reverse();
        var fit = LinearFit.Of([.. points.Select(point => point.Days)], [.. points.Select(point => point.Value)]);
        var half = fit.Then(line => line.SlopeHalfWidth());
        return half.HasValue ? (fit.Value.Slope * Month, half.Value * Month, points.Count) : (null, null, points.Count);
    }
}
