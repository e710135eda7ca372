using LogBook.Domain.Quantities;
using LogBook.Domain.Saturation;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Saturation;

public sealed class SaturationReferenceTests
{
    private const string Grid = "03-phreeqc-grid.csv";

    public static ReferenceChapter Chapter { get; } = new("03-saturation-indices.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["pHs_closed_form"] = row => Langelier.SaturationPh(Water(row)).Value,
        ["pHs_table_form"] = row => Langelier.SaturationPh(Water(row), LangelierForm.TableForm).Value,
        ["LSI_closed_form"] = row => Langelier.Index(Ph.From(row["pH"]), Water(row)).Value,
        ["RSI_closed_form"] = row => Langelier.Ryznar(Ph.From(row["pH"]), Langelier.SaturationPh(Water(row)).Value),
        ["PSI_closed_form"] = row => Langelier.Puckorius(Langelier.SaturationPh(Water(row)).Value, row["Alk_mgL_CaCO3"]).Value,
        ["factor_B_closed_form"] = row => Langelier.FactorB(TemperatureOf(row)).Value,
        ["factor_B_table"] = row => Langelier.FactorB(TemperatureOf(row), LangelierForm.TableForm).Value,
        ["pHeq"] = row => Langelier.EquilibriumPh(row["Alk_mgL_CaCO3"]).Value,
        ["PSI"] = row => Langelier.Puckorius(row["pHs"], row["Alk_mgL_CaCO3"]).Value,
        ["RSI"] = row => Langelier.Ryznar(Ph.From(row["pH"]), row["pHs"]),
        ["LSI"] = row => Langelier.Index(Ph.From(row["pH"]), row["pHs"]),
        ["pK2"] = row => CalciteEquilibrium.PK2(TemperatureOf(row)).Value,
        ["pKs_calcite"] = row => CalciteEquilibrium.PKs(TemperatureOf(row)).Value,
        ["pKw"] = row => CalciteEquilibrium.PKw(TemperatureOf(row)).Value,
        ["debye_huckel_A"] = row => CalciteEquilibrium.DebyeHuckelA(TemperatureOf(row)).Value,
        ["SI_SM2330"] = row => CalciteEquilibrium.Index(Ph.From(row["pH"]), Water(row)).Value,
        ["larson_skold"] = row => LarsonSkold.Index(
            new Concentration(row["Cl_mgL"], "as Cl"),
            new Concentration(row["SO4_mgL"], "as SO4"),
            new Concentration(row["Alk_mgL_CaCO3"], "as CaCO3")).Value,
        ["ionic_strength_from_TDS"] = row => CalciteEquilibrium.IonicStrength(row["TDS_mgL"]).Value,
        ["ionic_strength_from_EC"] = row => CalciteEquilibrium.IonicStrength(Conductivity.FromMicrosiemensPerCm(row["EC_uScm"])),
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    [Fact]
    public void FactorB_EveryRowOfThePrintedTable_IsThatRow() => Assert.All(
        ReferenceTable.Column("03-factor-b-table.csv", "T_F").Zip(ReferenceTable.Column("03-factor-b-table.csv", "B_table")),
        row => Assert.Equal(row.Second, Langelier.FactorB(Temperature.FromFahrenheit(row.First), LangelierForm.TableForm).Value, 1e-9));

    [Fact]
    public void FactorB_ClosedForm_IsTheColumnBesideThePrintedTable()
    {
        // 03-factor-b-table.csv, B_closed_form: computed from the formula, three decimals.
        var rows = ReferenceTable.Column("03-factor-b-table.csv", "T_F").Zip(ReferenceTable.Column("03-factor-b-table.csv", "B_closed_form")).ToList();

        Assert.Equal(69, rows.Count);
        Assert.All(rows, row => Assert.Equal(row.Second, Langelier.FactorB(Temperature.FromFahrenheit(row.First)).Value, 0.000501));
    }

    [Theory]
    [InlineData("LSI_closed_form", 0.35)]
    [InlineData("LSI_table_form", 0.45)]
    [InlineData("SI_SM2330_TDS", 0.30)]
    [InlineData("SI_SM2330_I", 0.30)]
    public void Index_SixtyWaters_AgreesWithItsFormulaAndStaysWithinTheHonestTolerance(string column, double honest)
    {
        // 03-phreeqc-grid.csv: calcite index of PHREEQC 3.8.9 (USGS), phreeqc.dat, 60 charge-balanced waters; columns have three decimals.
        double[] Of(string heading) => ReferenceTable.Column(Grid, heading);
        var (celsius, ph, tds) = (Of("T_C"), Of("pH"), Of("TDS_mgL"));
        var (calcium, alkalinity) = (Of("Ca_mgL_as_CaCO3"), Of("Alk_mgL_as_CaCO3"));
        var strength = Of("ionic_strength_analytical");
        var (formula, speciated) = (Of(column), Of("SI_calcite_phreeqc_dat"));

        Assert.Equal(60, formula.Length);
        for (var i = 0; i < formula.Length; i++)
        {
            var water = new CalciteWater(Temperature.FromCelsius(celsius[i]), tds[i], calcium[i], alkalinity[i]);
            var index = column switch
            {
                "LSI_closed_form" => Langelier.Index(Ph.From(ph[i]), water).Value,
                "SI_SM2330_I" => CalciteEquilibrium.Index(Ph.From(ph[i]), water, strength[i]).Value,
                "LSI_table_form" => Langelier.Index(Ph.From(ph[i]), water, LangelierForm.TableForm).Value,
                _ => CalciteEquilibrium.Index(Ph.From(ph[i]), water).Value,
            };

            // 0.001 for the formula and as much for the rounding of the inputs in the table.
            Assert.Equal(formula[i], index, 0.002);
            Assert.Equal(speciated[i], index, honest);
        }
    }

    [Fact]
    public void SaturationPh_NothingDissolved_HasNoValue() => Assert.Equal(
        SaturationReasons.NothingDissolved,
        Assert.Single(Langelier.SaturationPh(new CalciteWater(Temperature.FromCelsius(25), 320, 0, 34)).Reasons));

    [Fact]
    public void Index_Boiling_HasNoValue()
    {
        var water = new CalciteWater(Temperature.FromCelsius(100), 320, 150, 34);

        Assert.Equal(SaturationReasons.TemperatureOutside, Assert.Single(Langelier.Index(Ph.From(8), water).Reasons));
        Assert.Equal(SaturationReasons.TemperatureOutside, Assert.Single(CalciteEquilibrium.Index(Ph.From(8), water).Reasons));
    }

    [Fact]
    public void Index_SeaWaterTwiceOver_HasNoValue() => Assert.Equal(
        SaturationReasons.TooConcentrated,
        Assert.Single(CalciteEquilibrium.Index(Ph.From(8), new CalciteWater(Temperature.FromCelsius(25), 25_000, 150, 34)).Reasons));

    [Theory]
    [InlineData(-0.001)]
    [InlineData(double.NaN)]
    [InlineData(0.5)]
    public void Index_IonicStrengthThatNoFormulaReaches_HasNoValue(double ionicStrength) => Assert.False(
        CalciteEquilibrium.Index(Ph.From(8), new CalciteWater(Temperature.FromCelsius(25), 400, 150, 100), ionicStrength).HasValue);

    [Fact]
    public void Index_CausticBeyondTheAlkalinity_HasNoValue() => Assert.False(
        CalciteEquilibrium.Index(Ph.From(12), new CalciteWater(Temperature.FromCelsius(25), 400, 150, 20)).HasValue);

    private static CalciteWater Water(ReferenceRow row) => new(TemperatureOf(row), row["TDS_mgL"], row["Ca_mgL_CaCO3"], row["Alk_mgL_CaCO3"]);

    private static Temperature TemperatureOf(ReferenceRow row) =>
        row.Has("T_F") ? Temperature.FromFahrenheit(row["T_F"]) : Temperature.FromCelsius(row["T_C"]);
}
