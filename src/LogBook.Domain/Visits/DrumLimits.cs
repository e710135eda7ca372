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
        var capacityL = drum.CapacityL ?? drum.Shape switch
        {
            DrumShape.Rectangular => drum.LengthCm * drum.WidthCm * drum.HeightCm / 1000,
            DrumShape.HorizontalCylinder => Math.PI / 4 * drum.DiameterCm * drum.DiameterCm * drum.LengthCm / 1000,
            DrumShape.Table when drum.Points is [.., { Count: 2 }] => drum.Points[^1][1],
            _ => null,
        };

        // Without a density nothing is said of weight; products differ by more than the brim allows.
        var fullKg = product?.DensityKgPerL is { } density ? drum.TareKg + (capacityL * density) : null;
        return unit switch
        {
            UnitCodes.Centimetre => heightCm,
            UnitCodes.Inch => heightCm / 2.54,
            UnitCodes.Percent => 100,
            UnitCodes.Kilogram => fullKg,
            UnitCodes.Pound => fullKg / 0.45359237,
            UnitCodes.Litre => capacityL,
            UnitCodes.Millilitre => capacityL * 1000,
            UnitCodes.CubicMetre => capacityL / 1000,
            UnitCodes.UsGallon => capacityL / 3.785411784,
            UnitCodes.ImperialGallon => capacityL / 4.54609,
            UnitCodes.CubicFoot => capacityL / 28.316846592,
            _ => null,
        };
    }
}
