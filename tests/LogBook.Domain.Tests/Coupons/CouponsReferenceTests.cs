using LogBook.Domain.Coupons;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Coupons;

public sealed class CouponsReferenceTests
{
    private const double Cm2PerIn2 = ExactFactors.SquareCentimetresPerSquareInch;
    private static readonly TimeSpan Hour = TimeSpan.FromHours(1);

    public static ReferenceChapter Chapter { get; } = new("09-corrosion-coupons.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        // The constants of print follow from the function: one unit of each input.
        ["constant_K"] = row => row.TextOf("unit") == "mpy"
            ? CorrosionRate.MilsPerYear(1000, 1, Hour, 1).Value
            : CorrosionRate.MmPerYear(1000, 1, Hour, 1).Value,
        ["constant_mpy_g_in2_day"] = _ => CorrosionRate.MilsPerYear(1000, Cm2PerIn2, TimeSpan.FromDays(1), 1).Value,
        ["constant_mpy_mg_in2_h"] = _ => CorrosionRate.MilsPerYear(1, Cm2PerIn2, Hour, 1).Value,
        ["coupon_mpy"] = row => CorrosionRate.MilsPerYear(Milligrams(row), row["A_in2"] * Cm2PerIn2, TimeSpan.FromDays(row["days"]), row["D"]).Value,
        ["coupon_mm_y"] = row => CorrosionRate.MmPerYear(Milligrams(row), row["A_in2"] * Cm2PerIn2, TimeSpan.FromDays(row["days"]), row["D"]).Value,
        ["coupon_weight_loss_mg"] = row => CorrosionRate.MassLostMgAt(
            row["rate_mpy"] * ExactFactors.MillimetresPerMil, row["A_cm2"], TimeSpan.FromHours(row["hours"]), row["D"]).Value,
        ["mpy_to_mm_y"] = _ => Units.Convert(1, UnitCodes.MilsPerYear, UnitCodes.MmPerYear).Value,
        ["mpy_to_um_y"] = _ => 1000 * Units.Convert(1, UnitCodes.MilsPerYear, UnitCodes.MmPerYear).Value,
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    [Fact]
    public void MassLostMg_CouponGained_HasNoValue() => Assert.Equal(
        CouponReasons.DepositLeft, Assert.Single(CorrosionRate.MassLostMg(10_000, 9_999.5, 1.2).Reasons));

    [Fact]
    public void MassLostMg_WithBlank_LeavesWhatCleaningTook() => Assert.Equal(84, CorrosionRate.MassLostMg(10_000, 9_914.8, 1.2).Value, 1e-9);

    [Fact]
    public void MmPerYear_NoExposure_HasNoValue() => Assert.Equal(
        CouponReasons.Incomplete, Assert.Single(CorrosionRate.MmPerYear(85, 22, TimeSpan.Zero, 7.86).Reasons));

    private static double Milligrams(ReferenceRow row) => row.Has("W_g") ? 1000 * row["W_g"] : row["W_mg"];
}
