using System.Globalization;
using LogBook.Domain.Compensation;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Compensation;

public sealed class CompensationReferenceTests
{
    // The worked example of Standard Methods 2510 A that rows 04-028 to 04-031 share.
    private static readonly IonContent Example = new()
    {
        Calcium = 55, Magnesium = 12, Sodium = 28, Potassium = 3.2, Bicarbonate = 170, Sulphate = 77, Chloride = 20,
    };

    public static ReferenceChapter Chapter { get; } = new("04-conductivity.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["kcl_standard"] = row => (row.Has("mol_L")
            ? KclStandards.AtMolarity(row["mol_L"])
            : KclStandards.AtMolality(row["mol_kg"], Temperature.FromCelsius(row["T_C"]))).Value.MicrosiemensPerCm,
        ["to_25C_linear"] = row => TemperatureCompensation.Linear(
            row["EC_T"], Temperature.FromCelsius(row["T_C"]), row["alpha_per_C"]).Value.MicrosiemensPerCm,
        ["alpha_from_two_points"] = row => TemperatureCompensation.Alpha(
            Conductivity.FromMicrosiemensPerCm(row["EC1"]),
            Temperature.FromCelsius(row["T1_C"]),
            Conductivity.FromMicrosiemensPerCm(row["EC25"])).Value,
        ["to_25C_nonlinear"] = row => TemperatureCompensation.Iso7888(row["EC_T"], Temperature.FromCelsius(row["T_C"])).Value.MicrosiemensPerCm,
        ["tds_from_ec"] = row => DissolvedSolids.FromConductivity(Conductivity.FromMicrosiemensPerCm(row["EC25"]), row["k"]).Value,
        ["ec_sum_factors"] = row => DissolvedSolids.SumOfFactors(new IonContent
        {
            Calcium = row["Ca"], Magnesium = row["Mg"], Potassium = row["K"], Sodium = row["Na"],
            Bicarbonate = row["HCO3"], Chloride = row["Cl"], Sulphate = row["SO4"], Nitrate = row["NO3"],
        }).Value.MicrosiemensPerCm,
        ["ec_y2_k0"] = row => DissolvedSolids.AtInfiniteDilution(new IonContent
        {
            Calcium = row["Ca"], Magnesium = row["Mg"], Sodium = row["Na"], Potassium = row["K"],
            Bicarbonate = row["HCO3"], Sulphate = row["SO4"], Chloride = row["Cl"],
        }).Value.MicrosiemensPerCm,
        ["ec_y2_I"] = _ => DissolvedSolids.IonicStrength(Example).Value,
        ["ec_y2_y"] = _ => DissolvedSolids.IonicStrength(Example).Then(DissolvedSolids.ActivityCoefficient).Value,
        ["ec_y2_k"] = _ => DissolvedSolids.ByIons(Example).Value.MicrosiemensPerCm,
        ["limiting_equiv_conductance"] = row => DissolvedSolids.LimitingConductance(row.TextOf("ion")).Value,
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    public static TheoryData<double, double> F25 => Pairs("04-f25-iso7888.csv", "T_C", "f25_table");

    public static TheoryData<double, double> F25Formula => Pairs("04-f25-iso7888.csv", "T_C", "f25_formula");

    /// <summary>Strength in mol/kg, °C and µS/cm; the table has no value for 1 mol/kg at 18 °C.</summary>
    public static TheoryData<double, double, double> Kcl
    {
        get
        {
            var data = new TheoryData<double, double, double>();
            foreach (var row in ReferenceTable.Records("04-kcl-temperature.csv"))
            {
                foreach (var (strength, heading) in new[] { (0.01, "KCl_0.01_molal_uS_cm"), (0.1, "KCl_0.1_molal_uS_cm"), (1.0, "KCl_1.0_molal_uS_cm") })
                {
                    if (row[heading].Length > 0)
                    {
                        data.Add(strength, Number(row["T_C"]), Number(row[heading]));
                    }
                }
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    [Theory]
    [MemberData(nameof(F25))]
    public void Iso7888Factor_PrintedTable_IsNeverLowAndAtMost00011High(double celsius, double printed)
    {
        // 04-f25-iso7888.csv: ISO 7888 table as printed in two instrument manuals, three decimals.
        var factor = TemperatureCompensation.Iso7888Factor(Temperature.FromCelsius(celsius)).Value;

        Assert.InRange(factor - printed, -0.0001, 0.0011);
    }

    [Theory]
    [MemberData(nameof(F25Formula))]
    public void Iso7888Factor_ColumnOfTheFormula_IsThatColumn(double celsius, double computed) => Assert.Equal(
        computed, TemperatureCompensation.Iso7888Factor(Temperature.FromCelsius(celsius)).Value, 5.01e-6);

    [Theory]
    [MemberData(nameof(Kcl))]
    public void AtMolality_RowOfNistTable_IsThatRow(double molPerKg, double celsius, double printed) => Assert.Equal(
        printed, KclStandards.AtMolality(molPerKg, Temperature.FromCelsius(celsius)).Value.MicrosiemensPerCm, 1e-9);

    [Fact]
    public void Kcl_ThreeStrengthsAtTwelveTemperatures_LackOnlyOneValue() => Assert.Equal((3 * 12) - 1, Kcl.Count);

    [Fact]
    public void Compensation_FiveWatersAtManyTemperatures_ErrsAsMeasured()
    {
        // 04-temperature-compensation.csv: conductivity of PHREEQC 3.8.9 (USGS) at the water temperature and at 25 °C, four figures.
        Assert.All(ReferenceTable.Records("04-temperature-compensation.csv"), row =>
        {
            var (water, measured, at25) = (Temperature.FromCelsius(Number(row["T_C"])), Number(row["EC_T_phreeqc_uS_cm"]), Number(row["EC25_phreeqc_uS_cm"]));
            double Error(Conductivity compensated) => 100 * ((compensated.MicrosiemensPerCm / at25) - 1);

            Assert.Equal(
                Number(row["err_pct_linear_0.0191"]), Error(TemperatureCompensation.Linear(measured, water, TemperatureCompensation.AlphaKcl).Value), 0.1);
            Assert.Equal(Number(row["err_pct_linear_0.0200"]), Error(TemperatureCompensation.Linear(measured, water).Value), 0.1);
            if (row["err_pct_ISO7888"].Length > 0 && water.Celsius <= 36)
            {
                Assert.Equal(Number(row["err_pct_ISO7888"]), Error(TemperatureCompensation.Iso7888(measured, water).Value), 0.1);
            }
        });
    }

    [Fact]
    public void Iso7888_HotterThanItsRange_HasNoValue() => Assert.Equal(
        CompensationReasons.OutsideRange, Assert.Single(TemperatureCompensation.Iso7888(800, Temperature.FromCelsius(37)).Reasons));

    [Fact]
    public void AtMolarity_StrengthNotInTheTable_HasNoValue() => Assert.Equal(
        CompensationReasons.NoSuchStandard, Assert.Single(KclStandards.AtMolarity(0.03).Reasons));

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);

    private static TheoryData<double, double> Pairs(string file, string first, string second)
    {
        var data = new TheoryData<double, double>();
        foreach (var (one, other) in ReferenceTable.Column(file, first).Zip(ReferenceTable.Column(file, second)))
        {
            data.Add(one, other);
        }

        return data;
    }
}
