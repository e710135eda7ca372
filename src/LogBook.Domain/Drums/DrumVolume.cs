using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Drums;

/// <summary>Level of a drum into litres, for every shape, with the uncertainty of the level reading.</summary>
/// <remarks>
/// Levels outside the drum are refused, never clamped. Brim and usable are kept apart: below the suction is a heel.
/// Nominal sizes are not a calibration, and walls bulge: weighing beats a level. Reference: 07-tank-volume.md.
/// </remarks>
public static class DrumVolume
{
    /// <summary>Density of water used where a specific gravity is quoted, kg/L (1.000; 0.1 % below any pump error).</summary>
    public const double WaterKgPerL = 1.0;

    private const double CubicCmPerLitre = 1000;

    private const double Absurd = 1e9;

    /// <summary>Volume below a level, with the heel.</summary>
    /// <param name="drum">Its shape and sizes.</param>
    /// <param name="level">Depth of liquid, gross weight, % of the capacity, or a volume; not negative.</param>
    /// <param name="unit">UCUM: "cm" or "[in_i]"; "kg" or "[lb_av]" for a drum on a scale; "%"; "L", "mL", "m3", "[gal_us]", "[gal_br]".</param>
    /// <param name="product">For its density (1 kg/L when it has none).</param>
    /// <param name="table">Default uncertainties; <see cref="UncertaintyTable.Default"/> when none.</param>
    /// <param name="method">How the level was read, when known better than by its unit.</param>
    /// <returns>Litres; none when the level is outside, a size is missing, or the unit does not fit.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, vertical_cylinder, horizontal_cylinder, rectangular, volume_from_weight.</remarks>
    public static Computed<Estimate> FromLevel(
        Drum drum, double level, string? unit, Product? product, UncertaintyTable? table = null, LevelMethod? method = null)
    {
        var parsed = Units.Parse(unit);
        if (!parsed.HasValue)
        {
            return parsed.WithoutValue<Estimate>();
        }

        var definition = parsed.Value;
        return definition.Dimension switch
        {
            _ when !(level >= 0 && level < Absurd) => Computed<Estimate>.None(DrumReasons.LevelOutside),
            UnitDimension.Length => OfDepth(drum, In(level, definition, "cm"), unit, table ?? UncertaintyTable.Default, method),
            UnitDimension.Mass => OfWeight(drum, In(level, definition, "kg"), unit, product, table ?? UncertaintyTable.Default),
            UnitDimension.Volume => OfVolume(drum, In(level, definition, "L"), unit, table ?? UncertaintyTable.Default),
            UnitDimension.Percent => OfPercent(drum, level, unit, table ?? UncertaintyTable.Default),
            _ => Computed<Estimate>.None(DrumReasons.UnitForShape),
        };
    }

    /// <summary>Brim volume.</summary>
    /// <param name="drum">Its shape and sizes.</param>
    /// <returns>Capacity on file, else from the sizes; none when neither is there.</returns>
    public static Computed<Volume> Brim(Drum drum) => drum switch
    {
        { CapacityL: > 0 } => OfLitres(drum.CapacityL.Value),
        { Shape: DrumShape.HorizontalCylinder, DiameterCm: > 0, LengthCm: > 0 } =>
            OfLitres(TankGeometry.VerticalCylinder(drum.DiameterCm.Value, drum.LengthCm.Value) / CubicCmPerLitre),
        { Shape: DrumShape.Rectangular, LengthCm: > 0, WidthCm: > 0, HeightCm: > 0 } =>
            OfLitres(TankGeometry.Rectangular(drum.LengthCm.Value, drum.WidthCm.Value, drum.HeightCm.Value) / CubicCmPerLitre),
        { Shape: DrumShape.Table } => TableOf(drum).Map(points => Volume.FromLitres(points[^1].Litres)),
        _ => Computed<Volume>.None(DrumReasons.SizeMissing),
    };

    /// <summary>What the pump can still draw: volume above the heel.</summary>
    /// <param name="volume">Volume in the drum, L.</param>
    /// <param name="drum">For the heel (<see cref="Drum.UnusableL"/>, none is zero).</param>
    /// <returns>Litres, zero at or below the heel, with the uncertainty of the volume.</returns>
    public static Estimate Usable(Estimate volume, Drum drum)
    {
        var heel = drum.UnusableL ?? 0;
        return new Estimate(Math.Max(0, volume.Value - heel), volume.Unit, volume.Random, volume.Parts);
    }

    /// <summary>Whether the drum is at its heel: empty as far as the pump goes.</summary>
    /// <param name="volume">Volume in the drum, L.</param>
    /// <param name="drum">For the heel.</param>
    /// <returns>True at or below the heel.</returns>
    public static bool IsAtHeel(Estimate volume, Drum drum) => volume.Value <= (drum.UnusableL ?? 0);

    /// <summary>How much a centimetre of level holds, dV/dh.</summary>
    /// <param name="drum">Its shape and sizes.</param>
    /// <param name="levelCm">Where, cm; matters for a lying cylinder and a table.</param>
    /// <returns>L/cm; none for a drum on a scale, a missing size, or a level outside.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, horizontal_surface_width, consumption_uncertainty.</remarks>
    public static Computed<double> LitresPerCm(Drum drum, double levelCm)
    {
        var known = HeightOf(drum);
        if (!known.HasValue)
        {
            return known;
        }

        var height = known.Value;
        if (!(levelCm >= 0 && levelCm <= height))
        {
            return Computed<double>.None(DrumReasons.LevelOutside);
        }

        return drum.Shape switch
        {
            DrumShape.VerticalCylinder when drum.CapacityL > 0 => Computed<double>.Of(drum.CapacityL.Value / height),
            DrumShape.Rectangular when drum is { LengthCm: > 0, WidthCm: > 0 } =>
                Computed<double>.Of(drum.LengthCm.Value * drum.WidthCm.Value / CubicCmPerLitre),
            DrumShape.HorizontalCylinder when drum is { LengthCm: > 0 } =>
                Computed<double>.Of(TankGeometry.HorizontalCylinderSurfaceWidth(height, levelCm) * drum.LengthCm.Value / CubicCmPerLitre),
            DrumShape.Table => TableOf(drum).Then(points => SegmentOf(points, levelCm).Map(segment => segment.LitresPerCm)),
            _ => Computed<double>.None(DrumReasons.SizeMissing),
        };
    }

    /// <summary>Share of the capacity that is filled.</summary>
    /// <param name="volumeL">L, not negative.</param>
    /// <param name="capacityL">Usable capacity, L, above zero.</param>
    /// <returns>Percent; none for a capacity of zero or a volume above it.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, percent_full.</remarks>
    public static Computed<double> PercentFull(double volumeL, double capacityL)
    {
        if (!(double.IsFinite(capacityL) && capacityL > 0))
        {
            return Computed<double>.None(DrumReasons.SizeMissing);
        }

        return volumeL >= 0 && volumeL <= capacityL ? Computed<double>.Of(100 * volumeL / capacityL) : Computed<double>.None(DrumReasons.LevelOutside);
    }

    /// <summary>Product used between two levels, old − new + deliveries − taken out.</summary>
    /// <param name="older">Volume at the earlier reading, L.</param>
    /// <param name="newer">Volume at the later reading, L.</param>
    /// <param name="addedL">Delivered between, L.</param>
    /// <param name="removedL">Taken out between, L.</param>
    /// <returns>Litres; negative when a fill was not logged. Its uncertainty is that of two levels, whatever lies between.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, consumption_uncertainty.</remarks>
    public static Estimate Used(Estimate older, Estimate newer, double addedL = 0, double removedL = 0) =>
        older.Minus(newer).Plus(Estimate.Exact(addedL - removedL, "L"));

    /// <summary>Volume of a mass.</summary>
    /// <param name="mass">Net mass.</param>
    /// <param name="densityKgPerL">Density of the product, kg/L (specific gravity times <see cref="WaterKgPerL"/>), above zero.</param>
    /// <returns>Volume; none for a density of zero or less.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, volume_from_weight; 02-dosing.csv, volume_from_mass.</remarks>
    public static Computed<Volume> FromMass(Mass mass, double densityKgPerL) => double.IsFinite(densityKgPerL) && densityKgPerL > 0
        ? OfLitres(mass.Kilograms / densityKgPerL)
        : Computed<Volume>.None(UnitReasons.Impossible);

    /// <summary>Mass of a volume.</summary>
    /// <param name="volume">Volume.</param>
    /// <param name="densityKgPerL">Density of the product, kg/L, above zero.</param>
    /// <returns>Mass; none for a density of zero or less.</returns>
    /// <remarks>Reference: 07-tank-volume.csv, mass_from_volume.</remarks>
    public static Computed<Mass> ToMass(Volume volume, double densityKgPerL) => double.IsFinite(densityKgPerL) && densityKgPerL > 0
        ? Computed<Mass>.Of(Mass.FromKilograms(volume.Litres * densityKgPerL))
        : Computed<Mass>.None(UnitReasons.Impossible);

    private static Computed<Estimate> OfPercent(Drum drum, double percent, string? unit, UncertaintyTable table)
    {
        var brim = Brim(drum);
        return brim.HasValue ? OfVolume(drum, brim.Value.Litres * percent / 100, unit, table) : brim.WithoutValue<Estimate>();
    }

    private static Computed<Estimate> OfDepth(Drum drum, double levelCm, string? unit, UncertaintyTable table, LevelMethod? method)
    {
        var litresPerCm = LitresPerCm(drum, levelCm);
        if (!litresPerCm.HasValue)
        {
            return litresPerCm.WithoutValue<Estimate>();
        }

        var litres = LitresBelow(drum, levelCm);
        if (!litres.HasValue)
        {
            return litres.WithoutValue<Estimate>();
        }

        var level = table.DrumLevel(drum, unit, method);
        return level is { HasValue: true, Value: var u }
            ? Computed<Estimate>.Of(new Estimate(litres.Value, "L", u.Unit == "cm" ? u.Value * UncertainSlope(drum, levelCm, u.Value, litresPerCm.Value) : u.Value))
            : level;
    }

    // At bottom and top of a lying cylinder dV/dh is zero, but the level is still uncertain: take the slope one u further in.
    private static double UncertainSlope(Drum drum, double levelCm, double uCm, double litresPerCm)
    {
        if (drum.Shape != DrumShape.HorizontalCylinder || drum.DiameterCm is not { } diameter)
        {
            return litresPerCm;
        }

        var inside = Math.Clamp(levelCm, Math.Min(uCm, diameter / 2), Math.Max(diameter - uCm, diameter / 2));
        return LitresPerCm(drum, inside).Or(litresPerCm);
    }

    private static Computed<double> LitresBelow(Drum drum, double levelCm) => drum.Shape switch
    {
        DrumShape.HorizontalCylinder when drum is { DiameterCm: > 0, LengthCm: > 0 } =>
            Computed<double>.Of(TankGeometry.HorizontalCylinder(drum.DiameterCm.Value, drum.LengthCm.Value, levelCm) / CubicCmPerLitre),
        DrumShape.Table => TableOf(drum).Then(points => SegmentOf(points, levelCm).Map(segment =>
            segment.FromLitres + (segment.LitresPerCm * (levelCm - segment.FromCm)))),
        _ => LitresPerCm(drum, levelCm).Map(litresPerCm => litresPerCm * levelCm),
    };

    private static Computed<Estimate> OfWeight(Drum drum, double grossKg, string? unit, Product? product, UncertaintyTable table)
    {
        if (drum.Shape != DrumShape.ByWeight)
        {
            return Computed<Estimate>.None(DrumReasons.UnitForShape);
        }

        if (drum.TareKg is not >= 0)
        {
            return Computed<Estimate>.None(DrumReasons.SizeMissing);
        }

        // A balance may show an empty drum a little below its tare; further below it is another drum.
        var density = product?.DensityKgPerL ?? WaterKgPerL;
        return table.DrumLevel(drum, unit).Then(u => grossKg - drum.TareKg.Value < -2 * u.Value
            ? Computed<Estimate>.None(DrumReasons.LevelOutside)
            : FromMass(Mass.FromKilograms(Math.Max(0, grossKg - drum.TareKg.Value)), density)
                .Then(volume => NotAboveBrim(drum, new Estimate(volume.Litres, "L", u.Value / density), slackL: 2 * u.Value / density)));
    }

    private static Computed<Estimate> OfVolume(Drum drum, double litres, string? unit, UncertaintyTable table)
    {
        var level = table.DrumLevel(drum, unit, LevelMethod.Gauge);
        return level is { HasValue: true, Value: var u } ? NotAboveBrim(drum, new Estimate(litres, "L", u.Value), slackL: 1e-9 * litres) : level;
    }

    private static Computed<Estimate> NotAboveBrim(Drum drum, Estimate volume, double slackL)
    {
        var brim = Brim(drum);
        return brim.HasValue && volume.Value > brim.Value.Litres + slackL
            ? Computed<Estimate>.None(DrumReasons.LevelOutside)
            : Computed<Estimate>.Of(volume);
    }

    private static Computed<double> HeightOf(Drum drum) => drum switch
    {
        { Shape: DrumShape.ByWeight } => Computed<double>.None(DrumReasons.UnitForShape),
        { Shape: DrumShape.HorizontalCylinder, DiameterCm: > 0 } => Computed<double>.Of(drum.DiameterCm.Value),
        { Shape: DrumShape.Table } => TableOf(drum).Map(points => points[^1].Cm),
        { Shape: DrumShape.VerticalCylinder or DrumShape.Rectangular, HeightCm: > 0 } => Computed<double>.Of(drum.HeightCm.Value),
        _ => Computed<double>.None(DrumReasons.SizeMissing),
    };

    private static Computed<IReadOnlyList<(double Cm, double Litres)>> TableOf(Drum drum)
    {
        if (drum.Points.Count < 2 || drum.Points.Any(point => point.Count != 2 || !point.All(number => double.IsFinite(number) && number >= 0)))
        {
            return Computed<IReadOnlyList<(double, double)>>.None(DrumReasons.TableUnsound);
        }

        var points = drum.Points.Select(point => (Cm: point[0], Litres: point[1])).OrderBy(point => point.Cm).ToList();
        var rises = points.Zip(points.Skip(1)).All(pair => pair.Second.Cm > pair.First.Cm && pair.Second.Litres >= pair.First.Litres);
        return rises
            ? Computed<IReadOnlyList<(double, double)>>.Of(points)
            : Computed<IReadOnlyList<(double, double)>>.None(DrumReasons.TableUnsound);
    }

    private static Computed<(double FromCm, double FromLitres, double LitresPerCm)> SegmentOf(
        IReadOnlyList<(double Cm, double Litres)> points, double levelCm)
    {
        if (levelCm < points[0].Cm || levelCm > points[^1].Cm)
        {
            return Computed<(double, double, double)>.None(DrumReasons.LevelOutside);
        }

        var upper = 1;
        while (points[upper].Cm < levelCm)
        {
            upper++;
        }

        var (from, to) = (points[upper - 1], points[upper]);
        return Computed<(double, double, double)>.Of((from.Cm, from.Litres, (to.Litres - from.Litres) / (to.Cm - from.Cm)));
    }

    private static double In(double value, UnitDefinition unit, string to) => Units.Convert(value, unit.Code, to).Value;

    private static Computed<Volume> OfLitres(double litres) => Computed<Volume>.Of(Volume.FromLitres(litres));
}
