using LogBook.Domain.Tests.Reference;
using LogBook.Domain.TestKits;

namespace LogBook.Domain.Tests.TestKits;

public sealed class TestKitsReferenceTests
{
    public static ReferenceChapter Chapter { get; } = new(
        "06-test-kits.csv",
        new Dictionary<string, Func<ReferenceRow, object>>
        {
            ["ion_to_CaCO3"] = row => BasisConversion.Factor("as " + row.TextOf("ion"), Bases.AsCaCO3).Value,
            ["mass_factor"] = MassFactor,
            ["gpg_to_mgL"] = _ => HardnessUnits.GrainPerUsGallon,
            ["grain_per_imp_gal_to_mgL"] = _ => HardnessUnits.GrainPerImperialGallon,
            ["german_degree_to_mgL_CaCO3"] = _ => HardnessUnits.GermanDegree,
            ["french_degree_to_mgL_CaCO3"] = _ => HardnessUnits.FrenchDegree,
            ["meqL_to_mgL_CaCO3"] = _ => HardnessUnits.MilliequivalentPerLitre,
            ["titration_alkalinity"] = row => Titration.Alkalinity(row["acid_mL"], row["normality"], row["sample_mL"]).Value.MilligramsPerLitre,
            ["titration_chloride"] = row =>
                Titration.Chloride(row["titrant_mL"], row["blank_mL"], row["normality"], row["sample_mL"]).Value.MilligramsPerLitre,
            ["titration_hardness"] = row => Titration.Hardness(row["EDTA_mL"], row["mgCaCO3_per_mL"], row["sample_mL"]).Value.MilligramsPerLitre,
            ["drop_test"] = row => Titration.Drops(row["drops"], row["factor"]).Value,
            ["drop_factor"] = row => Titration.PerDrop(row["drop_mL"], row["normality"], row["sample_mL"]).Value,
            ["drop_resolution_u"] = row => Titration.StepUncertainty(row["factor"]),
            ["dilution"] = row => Titration.Diluted(row["reading"], row["sample_mL"], row["total_mL"]).Value,
            ["combined_halogen"] = row => Halogen.Combined(row["total"], row["free"]).Value,
            ["bromine_from_chlorine_reading"] = row => Halogen.AsBromine(row["reading_Cl2"]).Value,
            ["alkalinity_forms"] = row =>
            {
                var forms = AlkalinityForms.Of(row["P"], row["M"]).Value;
                return new[] { forms.Hydroxide, forms.Carbonate, forms.Bicarbonate };
            },
        },
        excluded: new Dictionary<string, string>
        {
            ["06-012"] = "common practice that LogBook does not follow: silica carries no charge at pH 7 to 9 and is never expressed as CaCO3",
        });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    // "MoO4 per Mo"; "HEDP acid (…) per PO4 by organic phosphate".
    private static object MassFactor(ReferenceRow row)
    {
        var sides = row.Inputs.Split(" per ");
        return BasisConversion.Factor("as " + sides[1].Split(' ')[0], "as " + sides[0].Split(' ')[0]).Value;
    }
}
