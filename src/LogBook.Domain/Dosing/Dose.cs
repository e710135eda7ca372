using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Dosing;

/// <summary>Doses and the feed that holds a level. Concentrations are mg/L as product unless "active" is said.</summary>
/// <remarks>
/// Valid for well-mixed systems without demand; system volume is often known to 20 % only. Density 1 kg/L of water is the one used
/// throughout. The label decides what may be dosed. Reference: 02-dosing.md, 02-dosing.csv.
/// </remarks>
public static class Dose
{
    private const double MgPerKg = 1e6;

    /// <summary>Product for a level in a volume, m = C V.</summary>
    /// <param name="mgPerL">C, not negative.</param>
    /// <param name="volume">V.</param>
    /// <returns>Mass of product; none for a negative level.</returns>
    /// <remarks>Reference: 02-dosing.csv, mass_for_dose, gal_for_dose, fl_oz_per_1000gal.</remarks>
    public static Computed<Mass> MassFor(double mgPerL, Volume volume) => IsAmount(mgPerL)
        ? Computed<Mass>.Of(Mass.FromKilograms(mgPerL * volume.Litres / MgPerKg))
        : Computed<Mass>.None(DosingReasons.Impossible);

    /// <summary>Level that an amount of product gives, m/V.</summary>
    /// <param name="mass">Product.</param>
    /// <param name="volume">V, above zero.</param>
    /// <returns>mg/L as product; none without a volume.</returns>
    public static Computed<double> LevelOf(Mass mass, Volume volume) => volume > Volume.Zero
        ? Computed<double>.Of(mass.Kilograms * MgPerKg / volume.Litres)
        : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Product level for a level of its active part, C/a.</summary>
    /// <param name="activeMgPerL">mg/L as active, not negative.</param>
    /// <param name="activePercent">Active part of the product by mass, %, above 0, up to 100.</param>
    /// <returns>mg/L as product.</returns>
    /// <remarks>Reference: 02-dosing.csv, product_from_active.</remarks>
    public static Computed<double> ProductFromActive(double activeMgPerL, double activePercent) =>
        IsAmount(activeMgPerL) && activePercent is > 0 and <= 100
            ? Computed<double>.Of(activeMgPerL / (activePercent / 100))
            : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Feed that makes up for losses, m' = C W.</summary>
    /// <param name="mgPerL">C, not negative.</param>
    /// <param name="loss">W, all liquid loss.</param>
    /// <returns>kg of product an hour.</returns>
    /// <remarks>Reference: 02-dosing.csv, feed_rate_to_hold.</remarks>
    public static Computed<double> FeedKgPerHour(double mgPerL, Flow loss) => IsAmount(mgPerL)
        ? Computed<double>.Of(mgPerL * loss.LitresPerHour / MgPerKg)
        : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Level in the make-up for a level in the system, C/cycles.</summary>
    /// <param name="systemMgPerL">mg/L in the system, not negative.</param>
    /// <param name="cycles">Above zero.</param>
    /// <returns>mg/L in the make-up; none for cycles of zero.</returns>
    /// <remarks>Reference: 02-dosing.csv, makeup_dose_for_system_dose.</remarks>
    public static Computed<double> InMakeUp(double systemMgPerL, double cycles)
    {
        if (!IsAmount(systemMgPerL))
        {
            return Computed<double>.None(DosingReasons.Impossible);
        }

        return double.IsFinite(cycles) && cycles > 0 ? Computed<double>.Of(systemMgPerL / cycles) : Computed<double>.None(DosingReasons.CyclesZero);
    }

    /// <summary>Product expected for the water of a period, C M/(cycles × density), without charges and demand.</summary>
    /// <param name="makeUp">M of the period, L.</param>
    /// <param name="cycles">Cycles of the same period, "1".</param>
    /// <param name="mgPerL">Level to be held, mg/L as product.</param>
    /// <param name="densityKgPerL">Of the product, kg/L, above zero.</param>
    /// <returns>Litres of product with the uncertainty of meter and cycles; none for cycles of zero or a make-up not in L.</returns>
    /// <remarks>Reference: 02-dosing.csv, expected_use, expected_use_uncertainty.</remarks>
    public static Computed<Estimate> ExpectedUse(Estimate makeUp, Estimate cycles, double mgPerL, double densityKgPerL = 1) =>
        cycles.Value > 0
            ? ForLoss(makeUp.Over(cycles, makeUp.Unit), mgPerL, densityKgPerL)
            : Computed<Estimate>.None(DosingReasons.CyclesZero);

    /// <summary>Product expected for the water that left as liquid, C W/density: the form for losses that bypass the bleed.</summary>
    /// <param name="loss">W of the period, L.</param>
    /// <param name="mgPerL">Level to be held, mg/L as product.</param>
    /// <param name="densityKgPerL">Of the product, kg/L, above zero.</param>
    /// <returns>Litres of product; none for a loss not in L.</returns>
    public static Computed<Estimate> ForLoss(Estimate loss, double mgPerL, double densityKgPerL = 1) =>
        loss.Unit == UnitCodes.Litre && IsAmount(mgPerL) && IsFactor(densityKgPerL)
            ? Computed<Estimate>.Of(loss.Scaled(mgPerL / MgPerKg / densityKgPerL, UnitCodes.Litre))
            : Computed<Estimate>.None(DosingReasons.Impossible);

    /// <summary>Level in the system that a use of product implies, C = m cycles/M.</summary>
    /// <param name="used">Product used in the period, L.</param>
    /// <param name="makeUp">M of the period, L, above zero.</param>
    /// <param name="cycles">Cycles of the period, "1".</param>
    /// <param name="densityKgPerL">Of the product, kg/L, above zero.</param>
    /// <returns>mg/L as product; none without make-up.</returns>
    /// <remarks>Reference: 02-dosing.csv, inhibitor_from_use.</remarks>
    public static Computed<Estimate> ImpliedLevel(Estimate used, Estimate makeUp, Estimate cycles, double densityKgPerL = 1)
    {
        if (used.Unit != UnitCodes.Litre || makeUp.Unit != UnitCodes.Litre || !IsFactor(densityKgPerL))
        {
            return Computed<Estimate>.None(DosingReasons.Impossible);
        }

        return makeUp.Value > 0
            ? Computed<Estimate>.Of(used.Times(cycles, UnitCodes.Litre).Over(makeUp, UnitCodes.MgPerL).Scaled(densityKgPerL * MgPerKg))
            : Computed<Estimate>.None(DosingReasons.NoWater);
    }

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;

    private static bool IsFactor(double value) => double.IsFinite(value) && value > 0;
}
