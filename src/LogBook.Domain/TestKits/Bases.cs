using LogBook.Domain.Programmes;

namespace LogBook.Domain.TestKits;

/// <summary>What results are expressed as, and the fixed basis of each standard test.</summary>
/// <remarks>Source: exchange format, "Tests and their fixed basis".</remarks>
public static class Bases
{
    /// <summary>As calcium carbonate.</summary>
    public const string AsCaCO3 = "as CaCO3";

    /// <summary>As chloride.</summary>
    public const string AsCl = "as Cl";

    /// <summary>As silica.</summary>
    public const string AsSiO2 = "as SiO2";

    /// <summary>As sulphate.</summary>
    public const string AsSO4 = "as SO4";

    /// <summary>As phosphate.</summary>
    public const string AsPO4 = "as PO4";

    /// <summary>As molybdenum.</summary>
    public const string AsMo = "as Mo";

    /// <summary>As chlorine.</summary>
    public const string AsCl2 = "as Cl2";

    /// <summary>As iron.</summary>
    public const string AsFe = "as Fe";

    /// <summary>As copper.</summary>
    public const string AsCu = "as Cu";

    /// <summary>As the treatment product, not its active part.</summary>
    public const string AsProduct = "as product";

    private static readonly Dictionary<string, string> Fixed = new(StringComparer.OrdinalIgnoreCase)
    {
        [TestCodes.Chloride] = AsCl,
        [TestCodes.Calcium] = AsCaCO3,
        [TestCodes.Magnesium] = AsCaCO3,
        [TestCodes.TotalHardness] = AsCaCO3,
        [TestCodes.Alkalinity] = AsCaCO3,
        [TestCodes.PAlkalinity] = AsCaCO3,
        [TestCodes.Silica] = AsSiO2,
        [TestCodes.Sulphate] = AsSO4,
        [TestCodes.Inhibitor] = AsProduct,
        [TestCodes.Phosphonate] = AsPO4,
        [TestCodes.Orthophosphate] = AsPO4,
        [TestCodes.Molybdate] = AsMo,
        [TestCodes.FreeHalogen] = AsCl2,
        [TestCodes.TotalHalogen] = AsCl2,
        [TestCodes.Iron] = AsFe,
        [TestCodes.Copper] = AsCu,
    };

    /// <summary>The fixed basis of a standard test.</summary>
    /// <param name="testCode">One of <see cref="TestCodes"/>.</param>
    /// <returns>The basis; null for tests without one (pH, conductivity, counts) and for added tests.</returns>
    public static string? OfTest(string testCode) => Fixed.GetValueOrDefault(testCode);
}
