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

    public static TheoryData<double, double> Kcl => Pairs("04-kcl-temperature.csv", "T_C", "KCl_0.01_molal_uS_cm");

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
    [MemberData(nameof(Kcl))]
    public void AtMolality_RowOfNistTable_IsThatRow(double celsius, double printed) => Assert.Equal(
        printed, KclStandards.AtMolality(0.01, Temperature.FromCelsius(celsius)).Value.MicrosiemensPerCm, 1e-9);

    [Fact]
    public void Compensation_FiveWatersAtManyTemperatures_ErrsAsMeasured()
    {
        // 04-temperature-compensation.csv: conductivity of PHREEQC 3.8.9 (USGS) at the water temperature and at 25 °C, four figures.
        var lines = ReferenceTable.Lines("04-temperature-compensation.csv");

        Assert.All(lines, cells =>
        {
            double At(int cell) => double.Parse(cells[cell], System.Globalization.CultureInfo.InvariantCulture);
            var (water, measured, at25) = (Temperature.FromCelsius(At(1)), At(2), At(3));
            double Error(Conductivity compensated) => 100 * ((compensated.MicrosiemensPerCm / at25) - 1);

            Assert.Equal(At(4), Error(TemperatureCompensation.Linear(measured, water, TemperatureCompensation.AlphaKcl).Value), 0.1);
            Assert.Equal(At(5), Error(TemperatureCompensation.Linear(measured, water).Value), 0.1);
            if (cells[6].Length > 0 && water.Celsius <= 36)
            {
                Assert.Equal(At(6), Error(TemperatureCompensation.Iso7888(measured, water).Value), 0.1);
            }
        });
    }

    [Fact]
    public void Iso7888_HotterThanItsRange_HasNoValue() => Assert.Equal(
        CompensationReasons.OutsideRange, Assert.Single(TemperatureCompensation.Iso7888(800, Temperature.FromCelsius(37)).Reasons));

    [Fact]
    public void AtMolarity_StrengthNotInTheTable_HasNoValue() => Assert.Equal(
        CompensationReasons.NoSuchStandard, Assert.Single(KclStandards.AtMolarity(0.03).Reasons));

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
