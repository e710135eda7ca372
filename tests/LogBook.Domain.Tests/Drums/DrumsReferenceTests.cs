using LogBook.Domain.Drums;
using LogBook.Domain.Estimates;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Drums;

public sealed class DrumsReferenceTests
{
    private const double KgPerLInPoundPerGallon = ExactFactors.KilogramsPerPound / ExactFactors.LitresPerUsGallon;

    public static ReferenceChapter Chapter { get; } = new("07-tank-volume.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["vertical_cylinder"] = row => row.Has("level_in")
            ? TankGeometry.VerticalCylinder(row["diameter_in"], row["level_in"]) / ExactFactors.CubicInchesPerUsGallon
            : 1000 * TankGeometry.VerticalCylinder(row["diameter_m"], row["level_m"]),
        ["horizontal_cylinder_fraction"] = row => TankGeometry.HorizontalCylinderShare(row["h_over_D"]),
        ["horizontal_cylinder"] = row => FromCm(
            new Drum
            {
                Code = "T", Product = "P", Shape = DrumShape.HorizontalCylinder, DiameterCm = 100 * row["diameter_m"], LengthCm = 100 * row["length_m"],
            },
            100 * row["level_m"]),
        ["rectangular"] = Rectangular,
        ["percent_full"] = row => DrumVolume.PercentFull(row["volume_L"], row["capacity_L"]).Value,
        ["mass_from_volume"] = row => DrumVolume.ToMass(Volume.FromLitres(row["volume_L"]), row["SG"] * row["water_kg_per_L"]).Value.Kilograms,
        ["volume_from_weight"] = VolumeFromWeight,
        ["consumption_uncertainty"] = row => Consumption(row).StandardUncertainty,
        ["consumption_uncertainty_pct"] = row => 100 * Consumption(row).StandardUncertainty / row["consumption_L"],
        ["horizontal_surface_width"] = row => TankGeometry.HorizontalCylinderSurfaceWidth(row["diameter_m"], row["level_m"]),
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    private static object Rectangular(ReferenceRow row)
    {
        var inches = row.Has("level_in");
        var cm = inches ? 2.54 : 100;
        var box = new Drum
        {
            Code = "T", Product = "P", Shape = DrumShape.Rectangular, HeightCm = 500,
            LengthCm = cm * row["length_m", "length_in"], WidthCm = cm * row["width_m", "width_in"],
        };
        var litres = DrumVolume.FromLevel(box, row["level_m", "level_in"] * (inches ? 1 : 100), inches ? "[in_i]" : "cm", null).Value.Value;
        return inches ? litres / ExactFactors.LitresPerUsGallon : litres;
    }

    private static object VolumeFromWeight(ReferenceRow row)
    {
        var product = new Product
        {
            Code = "P", Name = "Product", Kind = ProductKind.Inhibitor, DensityKgPerL = row["SG"] * row["water_lb_per_gal"] * KgPerLInPoundPerGallon,
        };
        var scale = new Drum { Code = "T", Product = "P", Shape = DrumShape.ByWeight, TareKg = 0 };
        return DrumVolume.FromLevel(scale, row["mass_lb"], "[lb_av]", product).Value.Value / ExactFactors.LitresPerUsGallon;
    }

    private static Estimate Consumption(ReferenceRow row)
    {
        var tote = new Drum
        {
            Code = "T", Product = "P", Shape = DrumShape.Rectangular, HeightCm = 100, LengthCm = 120, WidthCm = row["area_m2"] * 10_000 / 120,
        };
        var table = UncertaintyTable.Default.With(UncertaintyCodes.LevelSightGlass, row["u_level_mm"] / 10, "as in the row");
        Estimate At(double cm) => DrumVolume.FromLevel(tote, cm, "cm", null, table, LevelMethod.SightGlass).Value;
        return DrumVolume.Used(At(60), At(55));
    }

    private static double FromCm(Drum drum, double cm) => DrumVolume.FromLevel(drum, cm, "cm", null).Value.Value;
}
