using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using LogBook.Domain.TestKits;

namespace LogBook.Domain.Saturation;

/// <summary>Larson-Skold index, (Cl + SO4)/(HCO3 + CO3) in equivalents.</summary>
/// <remarks>
/// From lake water on mild steel without inhibitor: not for inhibited cooling water, so it never decides anything here.
/// Reference: 03-saturation-indices.csv, larson_skold.
/// </remarks>
public static class LarsonSkold
{
    /// <summary>Works out the index.</summary>
    /// <param name="chloride">In any basis that converts to CaCO3 ("as Cl").</param>
    /// <param name="sulphate">In any basis that converts to CaCO3 ("as SO4").</param>
    /// <param name="alkalinity">As CaCO3; total alkalinity stands for HCO3 + CO3 below pH 9.</param>
    /// <returns>Ratio; none without alkalinity, or for a basis that does not convert.</returns>
    public static Computed<double> Index(Concentration chloride, Concentration sulphate, Concentration alkalinity) =>
        BasisConversion.Convert(chloride, Bases.AsCaCO3).Then(cl => BasisConversion.Convert(sulphate, Bases.AsCaCO3).Then(so4 =>
            BasisConversion.Convert(alkalinity, Bases.AsCaCO3).Then(alk => alk.MilligramsPerLitre > 0
                ? Computed<double>.Of((cl.MilligramsPerLitre + so4.MilligramsPerLitre) / alk.MilligramsPerLitre)
                : Computed<double>.None(SaturationReasons.NothingDissolved))));
}
