using System.Globalization;
using LogBook.Domain.Compensation;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Compensation;

/// <summary>
/// 04-ec-grid.csv: conductivity of the 60 waters of 03-phreeqc-grid.csv by PHREEQC 3.8.9 (USGS) and, computed from the stated formulas, by
/// both methods from ions. The grid has hardness and alkalinity as CaCO3, 100.087 g/mol; alkalinity is taken as bicarbonate alone.
/// </summary>
public sealed class IonsReferenceTests
{
    // IUPAC abridged atomic weights, g/mol; written out here, so that a slip in the product's own would show.
    private const double CalciumCarbonate = 100.087;
    private const double Calcium = 40.078;
    private const double Magnesium = 24.305;
    private const double Bicarbonate = 1.008 + 12.011 + (3 * 15.999);

    private static readonly IReadOnlyList<IReadOnlyDictionary<string, string>> Rows = ReferenceTable.Records("04-ec-grid.csv");

    private static readonly Dictionary<string, IReadOnlyDictionary<string, string>> Waters =
        ReferenceTable.Records("03-phreeqc-grid.csv").ToDictionary(water => water["id"]);

    /// <summary>Four figures in the table, and as much again for the rounding of the ions: at most 1.3e-4 was found.</summary>
    [Fact]
    public void Conductivity_SixtyWaters_AgreesWithBothFormulas()
    {
        Assert.Equal(60, Rows.Select(row => row["id"]).Distinct().Count());
        Assert.All(Rows, row =>
        {
            var water = IonsOf(row);

            Near(row, "EC25_sum_of_factors", DissolvedSolids.SumOfFactors(water).Value.MicrosiemensPerCm, 5e-4);
            Near(row, "EC25_ion_y2_method", DissolvedSolids.ByIons(water).Value.MicrosiemensPerCm, 5e-4);

            // Five decimals; 0.0027 to 0.1 mol/L.
            Assert.Equal(Number(Waters[row["id"]]["ionic_strength_analytical"]), DissolvedSolids.IonicStrength(water).Value, 1e-5);
        });
    }

    /// <summary>What the methods err by against the program, in percent: the reason why no probe is judged by them.</summary>
    [Fact]
    public void Conductivity_SixtyWaters_ErrsAsMeasured() => Assert.All(Rows, row =>
    {
        var (water, program) = (IonsOf(row), Number(row["EC25_phreeqc_uS_cm"]));

        Assert.Equal(Number(row["err_sum_pct"]), 100 * ((DissolvedSolids.SumOfFactors(water).Value.MicrosiemensPerCm / program) - 1), 0.03);
        Assert.Equal(Number(row["err_y2_pct"]), 100 * ((DissolvedSolids.ByIons(water).Value.MicrosiemensPerCm / program) - 1), 0.03);
        Assert.Equal(Number(row["I_over_EC25_times_1e5"]), 1e5 * DissolvedSolids.IonicStrength(water).Value / program, 0.0015);
    });

    /// <summary>0.46 to 0.69 mg/L for each µS/cm on these waters, as the constant's remark says; three decimals in the table.</summary>
    [Fact]
    public void FromConductivity_SixtyWaters_TakesTheirOwnFactor()
    {
        Assert.All(Rows, row =>
        {
            var conductivity = Conductivity.FromMicrosiemensPerCm(Number(row["EC25_phreeqc_uS_cm"]));

            Near(row, "TDS_mgL", DissolvedSolids.FromConductivity(conductivity, Number(row["TDS_over_EC25"])).Value, 1.2e-3);
            Assert.Equal(Waters[row["id"]]["TDS_mgL"], row["TDS_mgL"]);
        });
        Assert.Equal(0.46, Rows.Min(row => Number(row["TDS_over_EC25"])), 0.005);
        Assert.Equal(0.69, Rows.Max(row => Number(row["TDS_over_EC25"])), 0.005);
    }

    private static void Near(IReadOnlyDictionary<string, string> row, string column, double got, double relative) => Assert.True(
        Math.Abs((got / Number(row[column])) - 1) <= relative,
        FormattableString.Invariant($"{row["id"]} {column}: expected {row[column]}, got {got:R}"));

    private static IonContent IonsOf(IReadOnlyDictionary<string, string> row)
    {
        var water = Waters[row["id"]];
        double Of(string column) => Number(water[column]);
        return new IonContent
        {
            Calcium = Of("Ca_mgL_as_CaCO3") * Calcium / CalciumCarbonate,
            Magnesium = Of("Mg_mgL_as_CaCO3") * Magnesium / CalciumCarbonate,
            Bicarbonate = Of("Alk_mgL_as_CaCO3") * 2 * Bicarbonate / CalciumCarbonate,
            Sodium = Of("Na_mgL"),
            Chloride = Of("Cl_mgL"),
            Sulphate = Of("SO4_mgL"),
        };
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
