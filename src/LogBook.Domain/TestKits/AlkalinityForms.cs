using LogBook.Domain.Outcomes;

namespace LogBook.Domain.TestKits;

/// <summary>Hydroxide, carbonate and bicarbonate from P and M alkalinity, all mg/L as CaCO3.</summary>
/// <param name="Hydroxide">OH.</param>
/// <param name="Carbonate">CO3.</param>
/// <param name="Bicarbonate">HCO3.</param>
/// <remarks>
/// Borate, phosphate, silicate and ammonia count as alkalinity: with them the split is fiction. One public sheet misprints OH as 2(T − P);
/// the forms must sum to M. Reference: 06-test-kits.csv, alkalinity_forms (Standard Methods 2320).
/// </remarks>
public sealed record AlkalinityForms(double Hydroxide, double Carbonate, double Bicarbonate)
{
    /// <summary>Splits alkalinity.</summary>
    /// <param name="p">P alkalinity (to pH 8.3), mg/L as CaCO3, not negative.</param>
    /// <param name="m">Total alkalinity, same, not below P.</param>
    /// <returns>The forms; none when P is above M.</returns>
    public static Computed<AlkalinityForms> Of(double p, double m)
    {
        if (!(p >= 0 && double.IsFinite(m) && m >= 0))
        {
            return Computed<AlkalinityForms>.None(TestKitReasons.Impossible);
        }

        if (p > m)
        {
            return Computed<AlkalinityForms>.None(TestKitReasons.PAboveM);
        }

        return Computed<AlkalinityForms>.Of(2 * p <= m
            ? new AlkalinityForms(0, 2 * p, m - (2 * p))
            : new AlkalinityForms((2 * p) - m, 2 * (m - p), 0));
    }
}
