using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Programmes;

/// <summary>The standard tests with their fixed basis, units, step and the limits beyond which a value is read again.</summary>
/// <remarks>
/// Limits are physical or practical bounds for water in and around a cooling tower, wide on purpose: they catch a slipped
/// decimal point or unit, they judge nothing. They are this project's own choice, not taken from a standard.
/// </remarks>
public static class TestCatalogue
{
    private static readonly string[] Conductivities = [UnitCodes.MicrosiemensPerCm, UnitCodes.MillisiemensPerCm];
    private static readonly string[] Concentrations = [UnitCodes.MgPerL, UnitCodes.UgPerL];
    private static readonly string[] Temperatures = [UnitCodes.Celsius, UnitCodes.Fahrenheit];
    private static readonly string[] Colonies = [UnitCodes.CfuPerMl, UnitCodes.CfuPer100Ml, UnitCodes.CfuPerL];
    private static readonly string[] CorrosionRates = [UnitCodes.MmPerYear, UnitCodes.MilsPerYear];

    private static readonly Dictionary<string, TestInfo> ByCode = Tests().ToDictionary(t => t.Code, StringComparer.OrdinalIgnoreCase);

    /// <summary>All standard tests, in the order of the format's description.</summary>
    public static IReadOnlyList<TestInfo> All { get; } = [.. ByCode.Values];

    /// <summary>A standard test.</summary>
    /// <param name="code">Code, in any case of letters.</param>
    /// <returns>The test, or null.</returns>
    public static TestInfo? Find(string? code) => code is not null && ByCode.TryGetValue(code, out var test) ? test : null;

    /// <summary>A standard test, or one that the firm adds.</summary>
    /// <param name="code">Code, in any case of letters.</param>
    /// <param name="firm">Set-up with the firm's own tests.</param>
    /// <returns>The test, or null. A firm's test takes every unit of the dimension of its own unit.</returns>
    public static TestInfo? Find(string? code, FirmSetUp firm)
    {
        if (Find(code) is { } standard)
        {
            return standard;
        }

        return code is not null && firm.Tests.TryGetValue(code, out var own) ? Of(own) : null;
    }

    /// <summary>What is known of a test that the firm adds.</summary>
    /// <param name="own">The firm's definition.</param>
    /// <returns>The same as a row of the catalogue; its name is the firm's in every language.</returns>
    public static TestInfo Of(TestDefinition own)
    {
        IEnumerable<string> others = UnitCodes.DimensionOf(own.Unit) is { } dimension ? UnitCodes.Of(dimension).Where(u => u != own.Unit) : [];
        return new TestInfo(own.Code, new Text(own.Name, own.Name, own.Name), own.Basis, [own.Unit, .. others], own.Step, null, null);
    }

    private static IEnumerable<TestInfo> Tests()
    {
        yield return new(TestCodes.Conductivity, new("Conductivity", "Conductividad", "Condutividade"), "at 25 Cel", Conductivities, 1, null, 20000);
        yield return new(TestCodes.Ph, new("pH", "pH", "pH"), null, [UnitCodes.Ph], 0.1, null, 14);
        yield return new(TestCodes.Temperature, new("Temperature", "Temperatura", "Temperatura"), null, Temperatures, 0.1, -10, 95);
        yield return new(TestCodes.Chloride, new("Chloride", "Cloruro", "Cloreto"), "as Cl", Concentrations, 5, null, 10000);
        yield return new(TestCodes.Calcium, new("Calcium hardness", "Dureza cálcica", "Dureza de cálcio"), "as CaCO3", Concentrations, 10, null, 5000);
        yield return new(TestCodes.Magnesium, new("Magnesium hardness", "Dureza magnésica", "Dureza de magnésio"), "as CaCO3", Concentrations, 10, null, 5000);
        yield return new(TestCodes.TotalHardness, new("Total hardness", "Dureza total", "Dureza total"), "as CaCO3", Concentrations, 10, null, 8000);
        yield return new(TestCodes.Alkalinity, new("Total alkalinity", "Alcalinidad total", "Alcalinidade total"), "as CaCO3", Concentrations, 10, null, 5000);
        yield return new(TestCodes.PAlkalinity, new("Alkalinity to pH 8.3", "Alcalinidad a pH 8,3", "Alcalinidade a pH 8,3"), "as CaCO3", Concentrations, 10, null, 5000);
        yield return new(TestCodes.Silica, new("Silica", "Sílice", "Sílica"), "as SiO2", Concentrations, 1, null, 500);
        yield return new(TestCodes.Sulphate, new("Sulphate", "Sulfato", "Sulfato"), "as SO4", Concentrations, 10, null, 10000);
        yield return new(TestCodes.Inhibitor, new("Inhibitor", "Inhibidor", "Inibidor"), "as product", Concentrations, 5, null, 5000);
        yield return new(TestCodes.Phosphonate, new("Phosphonate", "Fosfonato", "Fosfonato"), "as PO4", Concentrations, 0.1, null, 200);
        yield return new(TestCodes.Orthophosphate, new("Orthophosphate", "Ortofosfato", "Ortofosfato"), "as PO4", Concentrations, 0.1, null, 200);
        yield return new(TestCodes.Molybdate, new("Molybdate", "Molibdato", "Molibdato"), "as Mo", Concentrations, 0.1, null, 500);
        yield return new(TestCodes.Azole, new("Azole", "Azol", "Azol"), null, Concentrations, 0.1, null, 100);
        yield return new(TestCodes.FreeHalogen, new("Free halogen", "Halógeno libre", "Halogênio livre"), "as Cl2", Concentrations, 0.05, null, 50);
        yield return new(TestCodes.TotalHalogen, new("Total halogen", "Halógeno total", "Halogênio total"), "as Cl2", Concentrations, 0.05, null, 50);
        yield return new(TestCodes.Orp, new("Oxidation-reduction potential", "Potencial de oxidación-reducción", "Potencial de oxirredução"), null, [UnitCodes.Millivolt], 1, -1500, 1500);
        yield return new(TestCodes.Iron, new("Iron", "Hierro", "Ferro"), "as Fe", Concentrations, 0.05, null, 200);
        yield return new(TestCodes.Copper, new("Copper", "Cobre", "Cobre"), "as Cu", Concentrations, 0.05, null, 50);
        yield return new(TestCodes.Turbidity, new("Turbidity", "Turbidez", "Turbidez"), null, [UnitCodes.Ntu], 0.1, null, 4000);
        yield return new(TestCodes.Tds, new("Total dissolved solids", "Sólidos disueltos totales", "Sólidos dissolvidos totais"), null, Concentrations, 1, null, 20000);
        yield return new(TestCodes.Load, new("Load", "Carga", "Carga"), null, [UnitCodes.Percent, UnitCodes.Kilowatt, UnitCodes.TonOfRefrigeration], 1, null, null);
        yield return new(TestCodes.Approach, new("Approach", "Acercamiento", "Aproximação"), null, Temperatures, 0.1, -5, 40);
        yield return new(TestCodes.DipSlide, new("Dip slide", "Lámina de cultivo", "Lâmina de cultura"), null, Colonies, null, null, 1e9);
        yield return new(TestCodes.ColonyCount, new("Colony count", "Recuento de colonias", "Contagem de colônias"), null, Colonies, null, null, 1e9);
        yield return new(TestCodes.Legionella, new("Legionella", "Legionella", "Legionella"), null, Colonies, null, null, 1e7);
        yield return new(TestCodes.CorrosionSteel, new("Corrosion of steel", "Corrosión del acero", "Corrosão do aço"), null, CorrosionRates, 0.001, null, 5);
        yield return new(TestCodes.CorrosionCopper, new("Corrosion of copper", "Corrosión del cobre", "Corrosão do cobre"), null, CorrosionRates, 0.001, null, 1);
    }
}
