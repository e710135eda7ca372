namespace LogBook.Domain.Quantities;

/// <summary>Unit codes of the exchange format: UCUM text, compared letter for letter. The list is closed.</summary>
/// <remarks>Conversion is elsewhere in this folder; here is only what may be written.</remarks>
public static class UnitCodes
{
    /// <summary>Microsiemens per centimetre at 25 °C.</summary>
    public const string MicrosiemensPerCm = "uS/cm";

    /// <summary>Millisiemens per centimetre at 25 °C.</summary>
    public const string MillisiemensPerCm = "mS/cm";

    /// <summary>Milligrams per litre.</summary>
    public const string MgPerL = "mg/L";

    /// <summary>Micrograms per litre.</summary>
    public const string UgPerL = "ug/L";

    /// <summary>pH.</summary>
    public const string Ph = "[pH]";

    /// <summary>Degrees Celsius.</summary>
    public const string Celsius = "Cel";

    /// <summary>Degrees Fahrenheit.</summary>
    public const string Fahrenheit = "[degF]";

    /// <summary>Litre.</summary>
    public const string Litre = "L";

    /// <summary>Millilitre.</summary>
    public const string Millilitre = "mL";

    /// <summary>Cubic metre.</summary>
    public const string CubicMetre = "m3";

    /// <summary>US gallon.</summary>
    public const string UsGallon = "[gal_us]";

    /// <summary>Imperial gallon.</summary>
    public const string ImperialGallon = "[gal_br]";

    /// <summary>Cubic foot.</summary>
    public const string CubicFoot = "[cft_i]";

    /// <summary>Litres per hour.</summary>
    public const string LitresPerHour = "L/h";

    /// <summary>US gallons per minute.</summary>
    public const string UsGallonsPerMinute = "[gal_us]/min";

    /// <summary>Centimetre.</summary>
    public const string Centimetre = "cm";

    /// <summary>Inch.</summary>
    public const string Inch = "[in_i]";

    /// <summary>Percent.</summary>
    public const string Percent = "%";

    /// <summary>Kilogram.</summary>
    public const string Kilogram = "kg";

    /// <summary>Pound.</summary>
    public const string Pound = "[lb_av]";

    /// <summary>Hour.</summary>
    public const string Hour = "h";

    /// <summary>Minute.</summary>
    public const string Minute = "min";

    /// <summary>Milliampere.</summary>
    public const string Milliampere = "mA";

    /// <summary>Millivolt.</summary>
    public const string Millivolt = "mV";

    /// <summary>Kilowatt.</summary>
    public const string Kilowatt = "kW";

    /// <summary>Ton of refrigeration, 3.51685 kW; a code of this format, not of UCUM.</summary>
    public const string TonOfRefrigeration = "[ton_ref]";

    /// <summary>Bar.</summary>
    public const string Bar = "bar";

    /// <summary>Pound per square inch.</summary>
    public const string Psi = "[psi]";

    /// <summary>Drops.</summary>
    public const string Drops = "{drops}";

    /// <summary>Colony-forming units per millilitre.</summary>
    public const string CfuPerMl = "[CFU]/mL";

    /// <summary>Colony-forming units per 100 millilitres.</summary>
    public const string CfuPer100Ml = "[CFU]/(100.mL)";

    /// <summary>Colony-forming units per litre.</summary>
    public const string CfuPerL = "[CFU]/L";

    /// <summary>Nephelometric turbidity units.</summary>
    public const string Ntu = "{NTU}";

    /// <summary>Millimetres per year.</summary>
    public const string MmPerYear = "mm/a";

    /// <summary>Mils per year.</summary>
    public const string MilsPerYear = "[mil_i]/a";

    /// <summary>A plain number.</summary>
    public const string One = "1";

    private static readonly Dictionary<string, UnitDimension> Dimensions = new(StringComparer.Ordinal)
    {
        [MicrosiemensPerCm] = UnitDimension.Conductivity,
        [MillisiemensPerCm] = UnitDimension.Conductivity,
        [MgPerL] = UnitDimension.Concentration,
        [UgPerL] = UnitDimension.Concentration,
        [Ph] = UnitDimension.Ph,
        [Celsius] = UnitDimension.Temperature,
        [Fahrenheit] = UnitDimension.Temperature,
        [Litre] = UnitDimension.Volume,
        [Millilitre] = UnitDimension.Volume,
        [CubicMetre] = UnitDimension.Volume,
        [UsGallon] = UnitDimension.Volume,
        [ImperialGallon] = UnitDimension.Volume,
        [CubicFoot] = UnitDimension.Volume,
        [LitresPerHour] = UnitDimension.Flow,
        [UsGallonsPerMinute] = UnitDimension.Flow,
        [Centimetre] = UnitDimension.Length,
        [Inch] = UnitDimension.Length,
        [Percent] = UnitDimension.Percent,
        [Kilogram] = UnitDimension.Mass,
        [Pound] = UnitDimension.Mass,
        [Hour] = UnitDimension.Time,
        [Minute] = UnitDimension.Time,
        [Milliampere] = UnitDimension.Current,
        [Millivolt] = UnitDimension.Potential,
        [Kilowatt] = UnitDimension.Power,
        [TonOfRefrigeration] = UnitDimension.Power,
        [Bar] = UnitDimension.Pressure,
        [Psi] = UnitDimension.Pressure,
        [Drops] = UnitDimension.Drops,
        [CfuPerMl] = UnitDimension.Colonies,
        [CfuPer100Ml] = UnitDimension.Colonies,
        [CfuPerL] = UnitDimension.Colonies,
        [Ntu] = UnitDimension.Turbidity,
        [MmPerYear] = UnitDimension.CorrosionRate,
        [MilsPerYear] = UnitDimension.CorrosionRate,
        [One] = UnitDimension.Ratio,
    };

    /// <summary>Every code, in the order of the format's description.</summary>
    public static IReadOnlyList<string> All { get; } = [.. Dimensions.Keys];

    /// <summary>Whether a code is in the list.</summary>
    /// <param name="code">Text as written.</param>
    /// <returns>True for a code of the list, letter for letter.</returns>
    public static bool IsKnown(string? code) => code is not null && Dimensions.ContainsKey(code);

    /// <summary>Dimension of a code.</summary>
    /// <param name="code">Text as written.</param>
    /// <returns>The dimension, or null for a code that is not in the list.</returns>
    public static UnitDimension? DimensionOf(string? code) =>
        code is not null && Dimensions.TryGetValue(code, out var dimension) ? dimension : null;

    /// <summary>Codes of some dimensions.</summary>
    /// <param name="dimensions">Dimensions asked for.</param>
    /// <returns>Codes in the order of <see cref="All"/>.</returns>
    public static IReadOnlyList<string> Of(params UnitDimension[] dimensions) => [.. All.Where(code => dimensions.Contains(Dimensions[code]))];
}
