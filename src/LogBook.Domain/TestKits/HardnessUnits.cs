using LogBook.Domain.Quantities;

namespace LogBook.Domain.TestKits;

/// <summary>Older units of hardness, in mg/L as CaCO3.</summary>
/// <remarks>Reference: 06-test-kits.csv, gpg_to_mgL, grain_per_imp_gal_to_mgL, german_degree_to_mgL_CaCO3, meqL_to_mgL_CaCO3.</remarks>
public static class HardnessUnits
{
    /// <summary>mg/L in a grain per US gallon.</summary>
    public const double GrainPerUsGallon = ExactFactors.MilligramsPerLitrePerGrainPerUsGallon;

    /// <summary>mg/L in a grain per imperial gallon (Clark degree).</summary>
    public const double GrainPerImperialGallon = ExactFactors.MilligramsPerGrain / ExactFactors.LitresPerImperialGallon;

    /// <summary>mg/L as CaCO3 in a German degree (10 mg/L CaO).</summary>
    public const double GermanDegree = 10 * AtomicWeights.CaCO3 / AtomicWeights.CaO;

    /// <summary>mg/L as CaCO3 in a French degree.</summary>
    public const double FrenchDegree = 10;

    /// <summary>mg/L as CaCO3 in a milliequivalent per litre.</summary>
    public const double MilliequivalentPerLitre = AtomicWeights.CaCO3PerCharge;
}
