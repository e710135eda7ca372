namespace LogBook.Domain.Programmes;

/// <summary>Codes of the standard tests; their fixed bases stand in the exchange format.</summary>
public static class TestCodes
{
    /// <summary>Conductivity at 25 °C.</summary>
    public const string Conductivity = "conductivity";

    /// <summary>pH.</summary>
    public const string Ph = "pH";

    /// <summary>Temperature.</summary>
    public const string Temperature = "temperature";

    /// <summary>Chloride as Cl.</summary>
    public const string Chloride = "chloride";

    /// <summary>Calcium as CaCO3.</summary>
    public const string Calcium = "calcium";

    /// <summary>Magnesium as CaCO3.</summary>
    public const string Magnesium = "magnesium";

    /// <summary>Total hardness as CaCO3.</summary>
    public const string TotalHardness = "total-hardness";

    /// <summary>Total alkalinity as CaCO3.</summary>
    public const string Alkalinity = "alkalinity";

    /// <summary>Alkalinity to pH 8.3 as CaCO3.</summary>
    public const string PAlkalinity = "p-alkalinity";

    /// <summary>Silica as SiO2.</summary>
    public const string Silica = "silica";

    /// <summary>Sulphate as SO4.</summary>
    public const string Sulphate = "sulphate";

    /// <summary>Inhibitor as product.</summary>
    public const string Inhibitor = "inhibitor";

    /// <summary>Phosphonate as PO4.</summary>
    public const string Phosphonate = "phosphonate";

    /// <summary>Orthophosphate as PO4.</summary>
    public const string Orthophosphate = "orthophosphate";

    /// <summary>Molybdate as Mo.</summary>
    public const string Molybdate = "molybdate";

    /// <summary>Azole.</summary>
    public const string Azole = "azole";

    /// <summary>Free halogen as Cl2.</summary>
    public const string FreeHalogen = "free-halogen";

    /// <summary>Total halogen as Cl2.</summary>
    public const string TotalHalogen = "total-halogen";

    /// <summary>Oxidation-reduction potential.</summary>
    public const string Orp = "orp";

    /// <summary>Iron as Fe.</summary>
    public const string Iron = "iron";

    /// <summary>Copper as Cu.</summary>
    public const string Copper = "copper";

    /// <summary>Turbidity.</summary>
    public const string Turbidity = "turbidity";

    /// <summary>Total dissolved solids.</summary>
    public const string Tds = "tds";

    /// <summary>Load, % of full load or kW.</summary>
    public const string Load = "load";

    /// <summary>Approach temperature.</summary>
    public const string Approach = "approach";

    /// <summary>Dip slide.</summary>
    public const string DipSlide = "dip-slide";

    /// <summary>Colony count.</summary>
    public const string ColonyCount = "colony-count";

    /// <summary>Legionella.</summary>
    public const string Legionella = "legionella";

    /// <summary>Corrosion rate of a steel coupon.</summary>
    public const string CorrosionSteel = "corrosion-steel";

    /// <summary>Corrosion rate of a copper coupon.</summary>
    public const string CorrosionCopper = "corrosion-copper";

    /// <summary>Whether a test counts colonies: its result comes days later and nothing else is worked out from it.</summary>
    /// <param name="test">Code of a test.</param>
    /// <returns>True for dip slide, colony count and Legionella.</returns>
    public static bool IsCount(string test) =>
        test.Equals(DipSlide, StringComparison.OrdinalIgnoreCase) || test.Equals(ColonyCount, StringComparison.OrdinalIgnoreCase) || test.Equals(Legionella, StringComparison.OrdinalIgnoreCase);
}
