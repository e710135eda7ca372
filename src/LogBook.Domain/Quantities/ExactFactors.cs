namespace LogBook.Domain.Quantities;

/// <summary>Conversion factors that hold exactly by definition, or are ratios of such.</summary>
/// <remarks>
/// International definitions: US gallon 231 in³, inch 25.4 mm, pound 0.45359237 kg, standard gravity 9.80665 m/s²,
/// International Table Btu. Reference: 11-units.csv, factor (compared there with GNU units).
/// </remarks>
public static class ExactFactors
{
    /// <summary>L in a US gallon (231 in³).</summary>
    public const double LitresPerUsGallon = 3.785411784;

    /// <summary>L in an imperial gallon.</summary>
    public const double LitresPerImperialGallon = 4.54609;

    /// <summary>L in a cubic foot.</summary>
    public const double LitresPerCubicFoot = 28.316846592;

    /// <summary>Cubic inches in a US gallon.</summary>
    public const double CubicInchesPerUsGallon = 231;

    /// <summary>mL in a US fluid ounce (a 128th of a US gallon).</summary>
    public const double MillilitresPerUsFluidOunce = 29.5735295625;

    /// <summary>kg in an avoirdupois pound.</summary>
    public const double KilogramsPerPound = 0.45359237;

    /// <summary>g in an avoirdupois ounce.</summary>
    public const double GramsPerOunce = 28.349523125;

    /// <summary>mg in a grain (7000 in a pound).</summary>
    public const double MilligramsPerGrain = 64.79891;

    /// <summary>mm in an inch.</summary>
    public const double MillimetresPerInch = 25.4;

    /// <summary>m in a foot.</summary>
    public const double MetresPerFoot = 0.3048;

    /// <summary>m² in a square foot.</summary>
    public const double SquareMetresPerSquareFoot = 0.09290304;

    /// <summary>cm² in a square inch.</summary>
    public const double SquareCentimetresPerSquareInch = 6.4516;

    /// <summary>mm in a mil (a thousandth of an inch).</summary>
    public const double MillimetresPerMil = 0.0254;

    /// <summary>J in a Btu (International Table).</summary>
    public const double JoulesPerBtu = 1055.05585262;

    /// <summary>Btu/h in a ton of refrigeration.</summary>
    public const double BtuPerHourPerTonOfRefrigeration = 12000;

    /// <summary>Btu/h in a cooling-tower ton: a trade definition, a quarter more than a ton of refrigeration.</summary>
    public const double BtuPerHourPerTowerTon = 15000;

    /// <summary>kW in a ton of refrigeration, about 3.51685.</summary>
    public const double KilowattsPerTonOfRefrigeration = BtuPerHourPerTonOfRefrigeration * JoulesPerBtu / 3_600_000;

    /// <summary>kW in a cooling-tower ton, about 4.39607.</summary>
    public const double KilowattsPerTowerTon = BtuPerHourPerTowerTon * JoulesPerBtu / 3_600_000;

    /// <summary>kPa in a psi, about 6.89476.</summary>
    public const double KilopascalsPerPsi = KilogramsPerPound * 9.80665 / (0.0254 * 0.0254) / 1000;

    /// <summary>W in a mechanical horsepower (550 ft·lbf/s).</summary>
    public const double WattsPerHorsepower = 550 * MetresPerFoot * KilogramsPerPound * 9.80665;

    /// <summary>µS/cm in a mS/cm.</summary>
    public const double MicrosiemensPerCmPerMillisiemensPerCm = 1000;

    /// <summary>µS/cm in a mS/m, the unit of some laboratories.</summary>
    public const double MicrosiemensPerCmPerMillisiemensPerMetre = 10;

    /// <summary>mg/L in a grain per US gallon, about 17.118.</summary>
    public const double MilligramsPerLitrePerGrainPerUsGallon = MilligramsPerGrain / LitresPerUsGallon;

    /// <summary>mg/L in a pound per 1000 US gallons, about 119.826 (the trade figure 120 is 0.15 % high).</summary>
    public const double MilligramsPerLitrePerPoundPerThousandUsGallons = KilogramsPerPound * 1000 / LitresPerUsGallon;

    /// <summary>°C in a difference of one °F; a difference has no offset.</summary>
    public const double CelsiusPerFahrenheitDegree = 1 / 1.8;
}
