using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Coupons;

/// <summary>Why a coupon gives no rate.</summary>
public static class CouponReasons
{
    /// <summary>It gained mass.</summary>
    public static readonly Reason DepositLeft = new("coupon-gained", new Text(
        "The coupon weighs more than before: deposit is left on it.",
        "El cupón pesa más que antes: queda depósito en él.",
        "O cupom pesa mais que antes: ficou depósito nele."));

    /// <summary>Area, time or density is missing.</summary>
    public static readonly Reason Incomplete = new("coupon-incomplete", new Text(
        "Area, exposure or density of the coupon is missing.",
        "Falta el área, la exposición o la densidad del cupón.",
        "Falta a área, a exposição ou a densidade do cupom."));
}
