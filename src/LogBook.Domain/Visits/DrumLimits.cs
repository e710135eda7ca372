using LogBook.Domain.Drums;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Visits;

/// <summary>Largest level a drum can show.</summary>
internal static class DrumLimits
{
    /// <summary>Largest level in a unit, or null where the set-up does not tell.</summary>
    /// <param name="drum">The drum.</param>
    /// <param name="unit">Unit of the level.</param>
    /// <param name="product">Its product, for the weight of a full drum.</param>
    public static double? Highest(Drum drum, string unit, Product? product)
    {
        var heightCm = drum.Shape switch
        {
            DrumShape.VerticalCylinder or DrumShape.Rectangular => drum.HeightCm,
            DrumShape.HorizontalCylinder => drum.DiameterCm,
            DrumShape.Table when drum.Points is [.., { Count: 2 }] => drum.Points[^1][0],
            _ => null,
        };
        var brim = DrumVolume.Brim(drum);
        double? brimL = brim.HasValue ? brim.Value.Litres : null;

        // Without a density nothing is said of weight; products differ by more than the brim allows.
        var fullKg = product?.DensityKgPerL is { } density ? drum.TareKg + (brimL * density) : null;
        return UnitCodes.DimensionOf(unit) switch
        {
            UnitDimension.Length => In(heightCm, UnitCodes.Centimetre, unit),
            UnitDimension.Percent => 100,
            UnitDimension.Mass => In(fullKg, UnitCodes.Kilogram, unit),
            UnitDimension.Volume => In(brimL, UnitCodes.Litre, unit),
            _ => null,
        };
    }

    private static double? In(double? value, string from, string to) =>
        value is { } known && Units.Convert(known, from, to) is { HasValue: true } converted ? converted.Value : null;
}
