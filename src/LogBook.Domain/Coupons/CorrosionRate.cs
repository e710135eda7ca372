using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Coupons;

/// <summary>Mean corrosion rate of a coupon, K W/(A T D) with the exact constant.</summary>
/// <remarks>
/// Rounded constants in print (22 300, 534, 3.45e6) differ by up to 0.12 %. The rate is a mean: it says nothing of pitting, and early rates are
/// high, so 30 days never compare with 90. Densities come with the coupon. Reference: 09-corrosion-coupons.md, 09-corrosion-coupons.csv.
/// </remarks>
public static class CorrosionRate
{
    /// <summary>Exact constant for g, cm², h and g/cm³ into mm/a: 10 mm/cm × 8760 h/a.</summary>
    public const double MmPerYearConstant = 87_600;

    /// <summary>Mass lost to corrosion: initial − final − what a clean coupon loses in the cleaning step.</summary>
    /// <param name="initialMg">Before exposure, mg.</param>
    /// <param name="finalMg">After exposure and cleaning, mg.</param>
    /// <param name="blankMg">Lost by a clean coupon in cleaning, mg, not negative.</param>
    /// <returns>mg; none when it is below zero: deposit is left.</returns>
    public static Computed<double> MassLostMg(double initialMg, double finalMg, double blankMg = 0)
    {
        var lost = initialMg - finalMg - blankMg;
        if (!double.IsFinite(lost) || !(finalMg >= 0) || !(blankMg >= 0))
        {
            return Computed<double>.None(CouponReasons.Incomplete);
        }

        return lost >= 0 ? Computed<double>.Of(lost) : Computed<double>.None(CouponReasons.DepositLeft);
    }

    /// <summary>Rate in mm/a.</summary>
    /// <param name="massLostMg">W, mg, not negative.</param>
    /// <param name="areaCm2">A, all wetted faces and edges, cm², above zero.</param>
    /// <param name="exposure">T, above zero.</param>
    /// <param name="densityGPerCm3">D, of the metal, above zero.</param>
    /// <returns>mm/a; none when a number is missing.</returns>
    /// <remarks>Reference: 09-corrosion-coupons.csv, constant_K, coupon_mm_y.</remarks>
    public static Computed<double> MmPerYear(double massLostMg, double areaCm2, TimeSpan exposure, double densityGPerCm3) =>
        double.IsFinite(massLostMg) && massLostMg >= 0 && IsAboveZero(areaCm2) && exposure > TimeSpan.Zero && IsAboveZero(densityGPerCm3)
            ? Computed<double>.Of(MmPerYearConstant * massLostMg / 1000 / (areaCm2 * exposure.TotalHours * densityGPerCm3))
            : Computed<double>.None(CouponReasons.Incomplete);

    /// <summary>Rate in mils (0.001 in) a year.</summary>
    /// <param name="massLostMg">W, mg, not negative.</param>
    /// <param name="areaCm2">A, cm², above zero.</param>
    /// <param name="exposure">T, above zero.</param>
    /// <param name="densityGPerCm3">D, above zero.</param>
    /// <returns>mil/a; none when a number is missing.</returns>
    /// <remarks>Reference: 09-corrosion-coupons.csv, coupon_mpy, constant_mpy_mg_in2_h, constant_mpy_g_in2_day.</remarks>
    public static Computed<double> MilsPerYear(double massLostMg, double areaCm2, TimeSpan exposure, double densityGPerCm3) =>
        MmPerYear(massLostMg, areaCm2, exposure, densityGPerCm3).Map(rate => rate / ExactFactors.MillimetresPerMil);

    /// <summary>Mass that a rate takes away: what to expect of a coupon.</summary>
    /// <param name="mmPerYear">Rate, not negative.</param>
    /// <param name="areaCm2">A, cm², above zero.</param>
    /// <param name="exposure">T, above zero.</param>
    /// <param name="densityGPerCm3">D, above zero.</param>
    /// <returns>mg; none when a number is missing.</returns>
    /// <remarks>Reference: 09-corrosion-coupons.csv, coupon_weight_loss_mg.</remarks>
    public static Computed<double> MassLostMgAt(double mmPerYear, double areaCm2, TimeSpan exposure, double densityGPerCm3) =>
        double.IsFinite(mmPerYear) && mmPerYear >= 0 && IsAboveZero(areaCm2) && exposure > TimeSpan.Zero && IsAboveZero(densityGPerCm3)
            ? Computed<double>.Of(mmPerYear * areaCm2 * exposure.TotalHours * densityGPerCm3 / MmPerYearConstant * 1000)
            : Computed<double>.None(CouponReasons.Incomplete);

    private static bool IsAboveZero(double value) => double.IsFinite(value) && value > 0;
}
