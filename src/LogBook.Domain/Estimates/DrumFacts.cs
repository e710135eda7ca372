using LogBook.Domain.Drums;
using LogBook.Domain.Intervals;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>One drum at one visit.</summary>
/// <param name="Drum">The drum.</param>
/// <param name="Product">Its product, when on file.</param>
/// <param name="Reading">What was read.</param>
/// <param name="Found">Litres as found, or why not known.</param>
/// <param name="Left">Litres after deliveries, removals or an exchange, or why not known.</param>
public sealed record DrumFacts(Drum Drum, Product? Product, DrumReading Reading, Computed<Estimate> Found, Computed<Estimate> Left)
{
    /// <summary>The drums that a visit read or filled.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>One entry for each drum of the set-up that has a reading.</returns>
    public static IReadOnlyList<DrumFacts> Of(VisitFacts visit)
    {
        var all = new List<DrumFacts>();
        var table = visit.History.Firm.Engine.Uncertainties;
        foreach (var reading in visit.Record.Drums)
        {
            if (FeedParts.DrumOn(visit, reading.Drum) is { } drum)
            {
                var product = visit.History.Firm.Products.GetValueOrDefault(drum.Product);
                var scatter = visit.Previous?.LevelScatter(drum.Code);
                var found = Volume(drum, product, reading.Level, reading.Unit, table, scatter);
                all.Add(new DrumFacts(drum, product, reading, found, LeftOf(drum, product, reading, found, table, scatter)));
            }
        }

        return all;
    }

    /// <summary>What the visit changed in the drum, L: deliveries less removals, exactly as entered; null where a level tells it instead.</summary>
    public double? Change => Reading.Swapped == true || (Reading.Left is not null && Reading.AddedL is null && Reading.RemovedL is null)
        ? null
        : (Reading.AddedL ?? 0) - (Reading.RemovedL ?? 0);

    private static Computed<Estimate> Volume(Drum drum, Product? product, double? level, string? unit, UncertaintyTable table, LevelScatter? scatter) => level is { } number
        ? DrumVolume.FromLevel(drum, number, unit, product, table).Map(litres => litres.WithRandom((scatter ?? LevelScatter.None).Widened(litres.Random, ByGauge(drum, unit, table))))
        : Computed<Estimate>.None(IntervalReasons.NotRead);

    // On a scale, in percent or in litres the way of reading is known.
    private static double ByGauge(Drum drum, string? unit, UncertaintyTable table) =>
        Units.Parse(unit) is { HasValue: true, Value.Dimension: UnitDimension.Length } && DrumVolume.Brim(drum) is { HasValue: true, Value.Litres: var brim }
            ? brim * table.Share(UncertaintyCodes.LevelGauge)
            : 0;

    private static Computed<Estimate> LeftOf(Drum drum, Product? product, DrumReading reading, Computed<Estimate> found, UncertaintyTable table, LevelScatter? scatter)
    {
        if (reading.Swapped == true && reading.Left is null)
        {
            return Computed<Estimate>.None(IntervalReasons.SwapUnknown);
        }

        return reading.Swapped == true || (reading.Left is not null && reading.AddedL is null && reading.RemovedL is null)
            ? Volume(drum, product, reading.Left, reading.Unit, table, scatter)
            : found.Map(litres => litres.Plus(Estimate.Exact((reading.AddedL ?? 0) - (reading.RemovedL ?? 0), "L")));
    }
}
