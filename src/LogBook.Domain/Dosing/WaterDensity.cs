using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Dosing;

/// <summary>Density of pure air-free water.</summary>
public static class WaterDensity
{
    /// <summary>Density at a temperature.</summary>
    /// <param name="temperature">0 to 40 °C.</param>
    /// <returns>kg/m³; none outside that range.</returns>
    /// <remarks>
    /// Source: Tanaka et al., Metrologia 38 (2001) 301. Reference: 02-dosing.csv, density_water (IAPWS-IF97, within 0.01 kg/m³).
    /// Calculations use 1000 kg/m³ throughout: 0.1 to 0.2 % apart, below any pump error.
    /// </remarks>
    public static Computed<double> At(Temperature temperature)
    {
        var t = temperature.Celsius;
        return t is >= 0 and <= 40
            ? Computed<double>.Of(999.97495 * (1 - ((t - 3.983035) * (t - 3.983035) * (t + 301.797) / (522528.9 * (t + 69.34881)))))
            : Computed<double>.None(DosingReasons.Impossible);
    }
}
