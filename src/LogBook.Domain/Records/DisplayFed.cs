using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Records;

/// <summary>A feed that follows a display, at one visit: what the display showed, what it was set to, what the water's own test told and how long the feed ran.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Visit">The visit.</param>
/// <param name="Output">Code of the output, else of the drum.</param>
/// <param name="Test">Code of the test whose display the feed follows.</param>
/// <param name="Shown">What the display showed; null where it was not written down.</param>
/// <param name="SetPoint">What the programme in force asks of it; null where it does not say.</param>
/// <param name="Unit">Unit of both, UCUM.</param>
/// <param name="ResultTest">Code of the test that tells the product in the water by other means; null where none does.</param>
/// <param name="Result">Its result; null where it was not measured.</param>
/// <param name="HoursPerDay">Running of the output since its hours were last read, h/d.</param>
/// <remarks>
/// Follows from how such a feed works: a coated probe that reads high holds the feed back while its display stands at the set point, so the
/// display proves nothing; the residual and the hours do. Nothing is judged here.
/// </remarks>
public sealed record DisplayFed(DateTime At, Guid Visit, string Output, string Test, double? Shown, double? SetPoint, string Unit, string? ResultTest, Estimate? Result, Computed<Estimate> HoursPerDay)
{
    /// <summary>Feeds of a system that follow ORP, pH or a residual, visit by visit.</summary>
    /// <param name="latest">Facts of the newest visit; null where there was none.</param>
    /// <returns>Latest first; a visit at which neither display, test nor hours were read is left out.</returns>
    public static IReadOnlyList<DisplayFed> Of(VisitFacts? latest) => latest is null
        ? []
        : [.. latest.Back().SelectMany(OfVisit).Where(point => point.Shown is not null || point.Result is not null || point.HoursPerDay.HasValue)];

    private static IEnumerable<DisplayFed> OfVisit(VisitFacts visit)
    {
        foreach (var feed in visit.FeedsInForce)
        {
            var product = FeedParts.ProductInDrum(visit, feed.Drum);
            var residual = product is null ? null : FeedParts.ResidualTest(visit, product);
            var display = feed.Mode switch
            {
                FeedMode.ByOrp => TestCodes.Orp,
                FeedMode.ByPh => TestCodes.Ph,
                FeedMode.ByResidual => residual,
                _ => null,
            };
            if (display is null)
            {
                continue;
            }

            var output = FeedParts.OutputOf(visit, feed.Drum);
            var shown = visit.Record.Readings.FirstOrDefault(reading => reading.Source == ReadingSource.Controller && FeedParts.Same(reading.Test, display) && reading.Value is not null);
            var test = feed.Mode == FeedMode.ByPh ? TestCodes.Ph : residual;
            yield return new DisplayFed(
                visit.Visit.At,
                visit.Visit.Visit.Id,
                output ?? feed.Drum,
                display,
                shown?.Value,
                feed.SetPoint,
                shown?.Unit ?? feed.Unit ?? "1",
                test,
                test is null ? null : visit.TowerReading(test)?.Value,
                output is null ? Computed<Estimate>.None(VisitReasons.NotMeasured) : HoursPerDayOf(visit, output));
        }
    }

    private static Computed<Estimate> HoursPerDayOf(VisitFacts visit, string output)
    {
        var hours = visit.HoursRun(output);
        return hours.HasValue && visit.HoursSince(output) is { } since && (visit.Visit.At - since.Visit.At).TotalDays is > 0 and var days
            ? hours.Map(run => run.Scaled(1 / days, "h/d"))
            : hours.HasValue ? Computed<Estimate>.None(VisitReasons.NotMeasured) : hours;
    }
}
