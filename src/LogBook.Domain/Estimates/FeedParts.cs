using LogBook.Domain.Drums;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Estimates;

/// <summary>Which feed, pump, output and product belong to a drum.</summary>
internal static class FeedParts
{
    /// <summary>Whether two codes are the same: case does not count.</summary>
    public static bool Same(string? a, string? b) => string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    /// <summary>Feed of the programme in force that draws from a drum, or null.</summary>
    public static Feed? FeedOf(VisitFacts visit, string drum) => visit.Programme?.Feeds.FirstOrDefault(feed => Same(feed.Drum, drum));

    /// <summary>Pump that draws from a drum on the day of the visit, or null.</summary>
    public static Pump? PumpOf(VisitFacts visit, string drum) => visit.History.System.Pumps
        .Where(pump => Same(pump.Drum, drum) && (pump.From ?? DateOnly.MinValue) <= visit.Day)
        .MaxBy(pump => pump.From ?? DateOnly.MinValue);

    /// <summary>Output that feeds from a drum: as the programme says, else that of its pump; null where neither tells.</summary>
    public static string? OutputOf(VisitFacts visit, string drum) => FeedOf(visit, drum)?.Output ?? PumpOf(visit, drum)?.Output;

    /// <summary>Drum of the set-up on the day of the visit, or null.</summary>
    public static Drum? DrumOn(VisitFacts visit, string code) => visit.History.System.Drums
        .Where(drum => Same(drum.Code, code) && (drum.From ?? DateOnly.MinValue) <= visit.Day)
        .MaxBy(drum => drum.From ?? DateOnly.MinValue)
        ?? visit.History.System.Drums.FirstOrDefault(drum => Same(drum.Code, code));

    /// <summary>Product by its code, or null when it is not on file.</summary>
    public static Product? ProductOf(VisitFacts visit, string? code) => code is null ? null : visit.History.Firm.Products.GetValueOrDefault(code);

    /// <summary>Product a drum should hold, or null when it is not on file.</summary>
    public static Product? ProductInDrum(VisitFacts visit, string drum) => ProductOf(visit, DrumOn(visit, drum)?.Product);

    /// <summary>Test that shows a product; an oxidiser without one on file shows as halogen where that is tested. Null where nothing does.</summary>
    public static string? ResidualTest(VisitFacts visit, Product product) => product.Residual?.Test
        ?? (product.Oxidising != true ? null
            : visit.TowerReading(TestCodes.FreeHalogen) is not null ? TestCodes.FreeHalogen
            : visit.TowerReading(TestCodes.TotalHalogen) is not null ? TestCodes.TotalHalogen : null);

    /// <summary>
    /// Whether a drum as found holds nothing that the pump can draw: at its heel within half the uncertainty of its level, which is
    /// what a dip that ends on a dry suction looks like. Null when the level was not read.
    /// </summary>
    public static bool? IsEmpty(DrumFacts? drum) => drum is { Found: { HasValue: true, Value: var found } }
        ? DrumVolume.IsAtHeel(found.Minus(Estimate.Exact(found.StandardUncertainty / 2, "L")), drum.Drum)
        : null;

    /// <summary>The last visit before this one at which the level of a drum was read or is known after a filling, or null.</summary>
    public static VisitFacts? LastLevelBefore(VisitFacts visit, string drum) =>
        visit.Back().Skip(1).FirstOrDefault(earlier => earlier.Drum(drum) is { Left.HasValue: true });

    /// <summary>Amount of a product in litres; none for a unit that is neither volume nor mass.</summary>
    public static Computed<double> Litres(double amount, string unit, Product? product)
    {
        var litres = Quantities.Units.Convert(amount, unit, "L");
        return litres.HasValue ? litres : Quantities.Units.Convert(amount, unit, "kg").Map(kilograms => kilograms / (product?.DensityKgPerL ?? 1));
    }
}
