using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Compensation;

/// <summary>Conductivity measured at a water temperature brought to 25 °C.</summary>
/// <remarks>
/// A reading that its meter compensated already must not be compensated again. 2 % a degree is honest to about 2 % from 15 to 35 °C, so two
/// meters with different compensation can differ by 3 % and both be right. Reference: 04-conductivity.md, 04-conductivity.csv.
/// </remarks>
public static class TemperatureCompensation
{
    /// <summary>Coefficient of potassium chloride solutions, 1/°C.</summary>
    public const double AlphaKcl = 0.0191;

    /// <summary>Coefficient that most controllers use, 1/°C.</summary>
    public const double AlphaUsual = 0.02;

    /// <summary>Linear compensation, EC25 = EC/(1 + α (T − 25)).</summary>
    /// <param name="measuredUsPerCm">EC at the water temperature, µS/cm, not negative.</param>
    /// <param name="water">Water temperature.</param>
    /// <param name="alphaPerC">α, 1/°C.</param>
    /// <returns>Conductivity at 25 °C; none where the line comes to zero or below.</returns>
    /// <remarks>Source of 0.0191: Standard Methods 2510. Reference: 04-conductivity.csv, to_25C_linear.</remarks>
    public static Computed<Conductivity> Linear(double measuredUsPerCm, Temperature water, double alphaPerC = AlphaUsual)
    {
        var divisor = 1 + (alphaPerC * (water.Celsius - 25));
        if (!(divisor > 0))
        {
            return Computed<Conductivity>.None(CompensationReasons.OutsideRange);
        }

        var at25 = measuredUsPerCm / divisor;
        return double.IsFinite(at25) && at25 >= 0
            ? Computed<Conductivity>.Of(Conductivity.FromMicrosiemensPerCm(at25))
            : Computed<Conductivity>.None(CompensationReasons.Impossible);
    }

    /// <summary>Compensation of natural waters by ISO 7888 / EN 27888, EC25 = EC f25(T).</summary>
    /// <param name="measuredUsPerCm">EC at the water temperature, µS/cm, about 60 to 1000.</param>
    /// <param name="water">0 to 36 °C.</param>
    /// <returns>Conductivity at 25 °C; none outside that range.</returns>
    /// <remarks>Reference: 04-conductivity.csv, to_25C_nonlinear; 04-f25-iso7888.csv.</remarks>
    public static Computed<Conductivity> Iso7888(double measuredUsPerCm, Temperature water) => Iso7888Factor(water).Then(factor =>
        double.IsFinite(measuredUsPerCm) && measuredUsPerCm >= 0
            ? Computed<Conductivity>.Of(Conductivity.FromMicrosiemensPerCm(measuredUsPerCm * factor))
            : Computed<Conductivity>.None(CompensationReasons.Impossible));

    /// <summary>Factor f25 of ISO 7888 by its formula.</summary>
    /// <param name="water">0 to 36 °C.</param>
    /// <returns>Factor; never below the printed table and at most 0.0011 above it. None outside the range.</returns>
    /// <remarks>Constants as in two public codes. Reference: 04-f25-iso7888.csv.</remarks>
    public static Computed<double> Iso7888Factor(Temperature water)
    {
        if (water.Celsius is < 0 or > 36)
        {
            return Computed<double>.None(CompensationReasons.OutsideRange);
        }

        const double p = 0.962144;
        const double q = 0.965078;
        var v = -0.198058 + Math.Exp(-1.992186 + (231.17628 / (water.Celsius + 86.39123)));
        return Computed<double>.Of(1.116 * ((1 - p) + (p * Math.Pow(v, q))));
    }

    /// <summary>Coefficient from two readings of one water, (EC1/EC25 − 1)/(T1 − 25).</summary>
    /// <param name="measured">Conductivity at <paramref name="water"/>, uncompensated.</param>
    /// <param name="water">Another temperature than 25 °C.</param>
    /// <param name="at25">Conductivity at 25 °C, above zero.</param>
    /// <returns>1/°C; none at 25 °C.</returns>
    /// <remarks>Reference: 04-conductivity.csv, alpha_from_two_points.</remarks>
    public static Computed<double> Alpha(Conductivity measured, Temperature water, Conductivity at25) =>
        at25 > Conductivity.Zero && water.Celsius != 25
            ? Computed<double>.Of(((measured.MicrosiemensPerCm / at25.MicrosiemensPerCm) - 1) / (water.Celsius - 25))
            : Computed<double>.None(CompensationReasons.Impossible);
}
