using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Records;

/// <summary>A water meter over time: registers, dial against total, rollovers, exchanges, pulses lost.</summary>
/// <param name="Meter">The meter now in place.</param>
/// <param name="Points">Readings, oldest first.</param>
/// <param name="AllowedPercent">Difference of total and dial that is borne, %.</param>
public sealed record MeterRecord(Meter Meter, IReadOnlyList<MeterPoint> Points, double AllowedPercent)
{
    /// <summary>The records of all meters of a system.</summary>
    /// <param name="latest">Facts of the newest visit; null where there was none.</param>
    /// <returns>One record for each meter that was ever read, by code.</returns>
    public static IReadOnlyList<MeterRecord> Of(VisitFacts? latest)
    {
        if (latest is null)
        {
            return [];
        }

        var visits = latest.Back().Reverse().ToList();
        return
        [
            .. visits.SelectMany(visit => visit.Meters.Select(meter => (visit, meter)))
                .GroupBy(pair => pair.meter.Meter.Code, StringComparer.OrdinalIgnoreCase)
                .OrderBy(readings => readings.Key, StringComparer.OrdinalIgnoreCase)
                .Select(readings => new MeterRecord(
                    readings.Last().meter.Meter,
                    [.. readings.Select(pair => PointOf(pair.visit, pair.meter))],
                    latest.History.Firm.Engine.Thresholds.PulsesPercent.Value)),
        ];
    }

    private static MeterPoint PointOf(VisitFacts visit, MeterFacts meter)
    {
        double? days = meter.Since is { } since ? (visit.Visit.At - since.Visit.At).TotalDays : null;
        var both = meter.Dial.Then(dial => meter.Total.Map(total => (dial, total)));
        var pulse = PulsesLost.PulseLitres(meter);
        return new MeterPoint(
            visit.Visit.At,
            visit.Visit.Visit.Id,
            meter,
            days,
            days is > 0 ? meter.Litres.Map(litres => litres.Scaled(1 / days.Value, "L/d")) : Computed<Estimate>.None(VisitReasons.NotMeasured),
            both.Then(pair => pair.dial.Value > 0
                ? Computed<Estimate>.Of(pair.total.Over(pair.dial).Minus(Estimate.Exact(1)).Scaled(100, "%"))
                : Computed<Estimate>.None(VisitReasons.NotMeasured)),
            both.Map(pair => pair.dial.Minus(pair.total).Scaled(1 / pulse, "1")),
            meter is { Dial.HasValue: true, Reading: { Replaced: not true, Dial: { } now } } && meter.Since?.MeterReading(meter.Meter.Code)?.Dial > now);
    }
}
