using LogBook.Domain.Drums;
using LogBook.Domain.History;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Estimates;

/// <summary>Which feed, pump, output and product belong to a drum.</summary>
internal static class FeedParts
{
    /// <summary>Whether two codes are the same: case does not count.</summary>
    public static bool Same(string? a, string? b) => ReferenceEquals(a, b) || string.Equals(a, b, StringComparison.OrdinalIgnoreCase);

    /// <summary>Feed of the programme in force that draws from a drum, or null.</summary>
    public static Feed? FeedOf(VisitFacts visit, string drum)
    {
        var feeds = visit.FeedsInForce;
        for (var i = 0; i < feeds.Count; i++)
        {
            if (Same(feeds[i].Drum, drum))
            {
                return feeds[i];
            }
        }

        return null;
    }

    /// <summary>Pump that draws from a drum on the day of the visit, or null.</summary>
    public static Pump? PumpOf(VisitFacts visit, string drum)
    {
        Pump? newest = null;
        foreach (var pump in visit.History.Pumps)
        {
            if (Same(pump.Drum, drum) && (pump.From ?? DateOnly.MinValue) is var from && from <= visit.Day && (newest is null || from > (newest.From ?? DateOnly.MinValue)))
            {
                newest = pump;
            }
        }

        return newest;
    }

    /// <summary>Output that feeds from a drum: as the programme says, else that of its pump; null where neither tells.</summary>
    public static string? OutputOf(VisitFacts visit, string drum) => FeedOf(visit, drum)?.Output ?? PumpOf(visit, drum)?.Output;

    /// <summary>Drum of the set-up on the day of the visit, or null.</summary>
    public static Drum? DrumOn(VisitFacts visit, string code)
    {
        Drum? first = null;
        Drum? newest = null;
        foreach (var drum in visit.History.Drums)
        {
            if (Same(drum.Code, code))
            {
                first ??= drum;
                if ((drum.From ?? DateOnly.MinValue) is var from && from <= visit.Day && (newest is null || from > (newest.From ?? DateOnly.MinValue)))
                {
                    newest = drum;
                }
            }
        }

        return newest ?? first;
    }

    /// <summary>Whether a code is that of a drum of the set-up.</summary>
    public static bool IsDrum(SystemHistory history, string? code)
    {
        foreach (var drum in history.Drums)
        {
            if (Same(drum.Code, code))
            {
                return true;
            }
        }

        return false;
    }

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
    public static VisitFacts? LastLevelBefore(VisitFacts visit, string drum)
    {
        var earlier = visit.Previous;
        while (earlier is not null && earlier.Drum(drum) is not { Left.HasValue: true })
        {
            earlier = earlier.Previous;
        }

        return earlier;
    }

    /// <summary>Amount of a product in litres; none for a unit that is neither volume nor mass.</summary>
    public static Computed<double> Litres(double amount, string unit, Product? product)
    {
        var litres = Quantities.Units.Convert(amount, unit, "L");
        return litres.HasValue ? litres : Quantities.Units.Convert(amount, unit, "kg").Map(kilograms => kilograms / (product?.DensityKgPerL ?? 1));
    }
}
