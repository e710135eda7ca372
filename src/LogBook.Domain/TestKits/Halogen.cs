using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.TestKits;

/// <summary>Chlorine and bromine by DPD, mg/L as Cl2 unless said.</summary>
/// <remarks>DPD reads bromine as chlorine and cannot tell them apart. Reference: 06-test-kits.md.</remarks>
public static class Halogen
{
    /// <summary>pKa of hypochlorous acid at 25 °C; not confirmed from a source we could read.</summary>
    public const double HypochlorousPKa = 7.5;

    /// <summary>pKa of hypobromous acid at 25 °C; not confirmed from a source we could read.</summary>
    public const double HypobromousPKa = 8.65;

    /// <summary>Combined halogen, total − free.</summary>
    /// <param name="total">mg/L as Cl2, not negative.</param>
    /// <param name="free">mg/L as Cl2, not above the total.</param>
    /// <returns>mg/L as Cl2; none when free is above total: the pair is rejected.</returns>
    /// <remarks>Reference: 06-test-kits.csv, combined_halogen.</remarks>
    public static Computed<double> Combined(double total, double free)
    {
        if (!(double.IsFinite(total) && total >= 0 && free >= 0))
        {
            return Computed<double>.None(TestKitReasons.Impossible);
        }

        return free <= total ? Computed<double>.Of(total - free) : Computed<double>.None(TestKitReasons.FreeAboveTotal);
    }

    /// <summary>Bromine from a reading as chlorine, × 2.254.</summary>
    /// <param name="asCl2">mg/L as Cl2.</param>
    /// <returns>mg/L as Br2; none for a negative reading.</returns>
    /// <remarks>Reference: 06-test-kits.csv, bromine_from_chlorine_reading.</remarks>
    public static Computed<double> AsBromine(double asCl2) => double.IsFinite(asCl2) && asCl2 >= 0
        ? BasisConversion.Convert(asCl2, Bases.AsCl2, "as Br2")
        : Computed<double>.None(TestKitReasons.Impossible);

    /// <summary>Share of the halogen that is the active acid, 1/(1 + 10^(pH − pKa)).</summary>
    /// <param name="ph">pH of the water.</param>
    /// <param name="pKa">Of the acid: <see cref="HypochlorousPKa"/> or <see cref="HypobromousPKa"/>.</param>
    /// <returns>0 to 1.</returns>
    public static double ActiveShare(Ph ph, double pKa) => 1 / (1 + Math.Pow(10, ph.Value - pKa));
}
