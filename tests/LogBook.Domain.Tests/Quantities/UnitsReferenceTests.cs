using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Quantities;

public sealed class UnitsReferenceTests
{
    private static readonly Dictionary<string, Func<double>> Factors = new()
    {
        ["US gal to L"] = () => Convert(1, "[gal_us]", "L"),
        ["imperial gal to L"] = () => Convert(1, "[gal_br]", "L"),
        ["ft3 to L"] = () => Convert(1, "[cft_i]", "L"),
        ["m3 to US gal"] = () => Convert(1, "m3", "[gal_us]"),
        ["imperial gal to US gal"] = () => Convert(1, "[gal_br]", "[gal_us]"),
        ["in3 per US gal"] = () => ExactFactors.CubicInchesPerUsGallon,
        ["lb to kg"] = () => Convert(1, "[lb_av]", "kg"),
        ["oz (avdp) to g"] = () => ExactFactors.GramsPerOunce,
        ["grain to mg"] = () => ExactFactors.MilligramsPerGrain,
        ["in to mm"] = () => 10 * Convert(1, "[in_i]", "cm"),
        ["ft to m"] = () => ExactFactors.MetresPerFoot,
        ["ft2 to m2"] = () => ExactFactors.SquareMetresPerSquareFoot,
        ["in2 to cm2"] = () => ExactFactors.SquareCentimetresPerSquareInch,
        ["US fl oz to mL"] = () => ExactFactors.MillilitresPerUsFluidOunce,
        ["gpm to L/s"] = () => Convert(1, "[gal_us]/min", "L/h") / 3600,
        ["gpm to m3/h"] = () => Convert(1, "[gal_us]/min", "L/h") / 1000,
        ["gph to L/h"] = () => Convert(1 / 60.0, "[gal_us]/min", "L/h"),
        ["mgd to m3/d"] = () => 1000 * ExactFactors.LitresPerUsGallon,
        ["Btu (IT) to J"] = () => ExactFactors.JoulesPerBtu,
        ["ton of refrigeration to Btu/h"] = () => ExactFactors.BtuPerHourPerTonOfRefrigeration,
        ["ton of refrigeration to kW"] = () => Convert(1, "[ton_ref]", "kW"),
        ["cooling-tower ton to Btu/h"] = () => ExactFactors.BtuPerHourPerTowerTon,
        ["cooling-tower ton to kW"] = () => ExactFactors.KilowattsPerTowerTon,
        ["psi to kPa"] = () => 100 * Convert(1, "[psi]", "bar"),
        ["mS/cm to uS/cm"] = () => Convert(1, "mS/cm", "uS/cm"),
        ["mS/m to uS/cm"] = () => ExactFactors.MicrosiemensPerCmPerMillisiemensPerMetre,
        ["grain/US gal to mg/L"] = () => ExactFactors.MilligramsPerLitrePerGrainPerUsGallon,
        ["lb/1000 US gal to mg/L"] = () => ExactFactors.MilligramsPerLitrePerPoundPerThousandUsGallons,
        ["mil to mm"] = () => Convert(1, "[mil_i]/a", "mm/a"),
        ["hp (mechanical) to W"] = () => ExactFactors.WattsPerHorsepower,
    };

    public static ReferenceChapter Chapter { get; } = new("11-units.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["factor"] = row => Factors[row.Inputs](),
        ["F_to_C"] = row => Convert(row["F"], "[degF]", "Cel"),
        ["dF_to_dC"] = row => Units.ConvertDifference(row["dF"], "[degF]", "Cel").Value,
        ["ppm_to_mgL"] = row => Units.PpmByMassToMgPerL(row["ppm_ww"], row["density_kg_L"]).Value,
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    private static double Convert(double value, string from, string to) => Units.Convert(value, from, to).Value;
}
