using LogBook.Domain.Intervals;
using LogBook.Domain.Meters;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>One water meter at one visit: water since its last reading by dial and by total.</summary>
/// <param name="Meter">The meter now in place.</param>
/// <param name="Reading">What was read.</param>
/// <param name="Since">Visit of its last reading, or null for the first.</param>
/// <param name="Dial">Litres by the dial since then, or why not known.</param>
/// <param name="Total">Litres by the controller's total since then, or why not known.</param>
public sealed record MeterFacts(Meter Meter, MeterReading Reading, VisitFacts? Since, Computed<Estimate> Dial, Computed<Estimate> Total)
{
    /// <summary>Litres by the dial, or by the total where the dial does not tell.</summary>
    public Computed<Estimate> Litres => Dial.HasValue ? Dial : Total.HasValue ? Total : Dial;

    /// <summary>The meters that a visit read.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>One entry for each meter of the set-up that has a reading.</returns>
    public static IReadOnlyList<MeterFacts> Of(VisitFacts visit)
    {
        var all = new List<MeterFacts>();
        foreach (var reading in visit.Record.Meters)
        {
            if (MeterOn(visit, reading.Meter) is { } meter)
            {
                all.Add(Of(visit, meter, reading));
            }
        }

        return all;
    }

    /// <summary>Usual mean flow of a meter over the intervals before a visit, L/h: the median of at most twelve; null before there is one.</summary>
    /// <param name="before">Facts of the visit up to which to look, which is not counted.</param>
    /// <param name="code">Code of the meter.</param>
    /// <returns>L/h.</returns>
    public static double? UsualFlow(VisitFacts before, string code)
    {
        Span<double> flows = stackalloc double[12];
        var count = 0;
        for (var visit = before.Previous; visit is not null && count < flows.Length; visit = visit.Previous)
        {
            if (visit.Meter(code) is { Since: { } since, Litres: { HasValue: true, Value: var litres } }
                && litres.Value / Math.Max(1, (visit.Visit.At - since.Visit.At).TotalHours) is > 0 and var flow)
            {
                flows[count++] = flow;
            }
        }

        return count == 0 ? null : Statistics.MedianInPlace(flows[..count]);
    }

    private static MeterFacts Of(VisitFacts visit, Meter meter, MeterReading reading)
    {
        var since = visit.Previous;
        while (since is not null && since.MeterReading(reading.Meter) is null)
        {
            since = since.Previous;
        }

        if (since is null)
        {
            var first = Computed<Estimate>.None(IntervalReasons.NoEarlierReading);
            return new MeterFacts(meter, reading, null, first, first);
        }

        var then = since.MeterReading(reading.Meter)!;
        var judge = new RolloverJudge(visit.Visit.At - since.Visit.At, meter.MaxLPerH, UsualFlow(visit, reading.Meter));
        return new MeterFacts(
            meter,
            reading,
            since,
            MeterDifference.OfDial(meter, then, reading, judge, MeterOn(since, reading.Meter), visit.History.Firm.Engine.Uncertainties),
            MeterDifference.OfTotal(meter, then, reading, judge, table: visit.History.Firm.Engine.Uncertainties));
    }

    // A renewed meter keeps its code with another "from"; the old one's digits and unit serve the days before.
    private static Meter? MeterOn(VisitFacts visit, string code)
    {
        Meter? first = null;
        Meter? newest = null;
        foreach (var meter in visit.History.Meters)
        {
            if (FeedParts.Same(meter.Code, code))
            {
                first ??= meter;
                if ((meter.From ?? DateOnly.MinValue) is var from && from <= visit.Day && (newest is null || from > (newest.From ?? DateOnly.MinValue)))
                {
                    newest = meter;
                }
            }
        }

        return newest ?? first;
    }
}
