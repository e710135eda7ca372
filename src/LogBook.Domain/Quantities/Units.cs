using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Quantities;

/// <summary>The one place where values are converted between units.</summary>
/// <remarks>
/// Codes are those of <see cref="UnitCodes"/>. A missing or foreign unit gives a reason, never a guess. Factors: <see cref="ExactFactors"/>. Reference: 11-units.csv.
/// </remarks>
public static class Units
{
    // Base value = (value + offset) × factor; the base of a dimension is the unit with factor one.
    private static readonly Dictionary<string, UnitDefinition> ByCode = new (string Code, double Factor, double Offset)[]
    {
        (UnitCodes.MicrosiemensPerCm, 1, 0),
        (UnitCodes.MillisiemensPerCm, ExactFactors.MicrosiemensPerCmPerMillisiemensPerCm, 0),
        (UnitCodes.MgPerL, 1, 0),
        (UnitCodes.UgPerL, 1 / 1000.0, 0),
        (UnitCodes.Ph, 1, 0),
        (UnitCodes.Celsius, 1, 0),
        (UnitCodes.Fahrenheit, 1 / 1.8, -32),
        (UnitCodes.Litre, 1, 0),
        (UnitCodes.Millilitre, 1 / 1000.0, 0),
        (UnitCodes.CubicMetre, 1000, 0),
        (UnitCodes.UsGallon, ExactFactors.LitresPerUsGallon, 0),
        (UnitCodes.ImperialGallon, ExactFactors.LitresPerImperialGallon, 0),
        (UnitCodes.CubicFoot, ExactFactors.LitresPerCubicFoot, 0),
        (UnitCodes.LitresPerHour, 1, 0),
        (UnitCodes.UsGallonsPerMinute, 60 * ExactFactors.LitresPerUsGallon, 0),
        (UnitCodes.Centimetre, 1, 0),
        (UnitCodes.Inch, ExactFactors.MillimetresPerInch / 10, 0),
        (UnitCodes.One, 1, 0),
        (UnitCodes.Percent, 1, 0),
        (UnitCodes.Kilogram, 1, 0),
        (UnitCodes.Pound, ExactFactors.KilogramsPerPound, 0),
        (UnitCodes.Hour, 1, 0),
        (UnitCodes.Minute, 1 / 60.0, 0),
        (UnitCodes.Milliampere, 1, 0),
        (UnitCodes.Millivolt, 1, 0),
        (UnitCodes.Kilowatt, 1, 0),
        (UnitCodes.TonOfRefrigeration, ExactFactors.KilowattsPerTonOfRefrigeration, 0),
        (UnitCodes.Bar, 1, 0),
        (UnitCodes.Psi, ExactFactors.KilopascalsPerPsi / 100, 0),
        (UnitCodes.Drops, 1, 0),
        (UnitCodes.CfuPerMl, 1, 0),
        (UnitCodes.CfuPer100Ml, 1 / 100.0, 0),
        (UnitCodes.CfuPerL, 1 / 1000.0, 0),
        (UnitCodes.Ntu, 1, 0),
        (UnitCodes.MmPerYear, 1, 0),
        (UnitCodes.MilsPerYear, ExactFactors.MillimetresPerMil, 0),
    }.ToDictionary(
        unit => unit.Code,
        unit => new UnitDefinition(unit.Code, UnitCodes.DimensionOf(unit.Code)!.Value, unit.Factor, unit.Offset),
        StringComparer.Ordinal);

    /// <summary>All units with their factors.</summary>
    public static IReadOnlyCollection<UnitDefinition> All => ByCode.Values;

    /// <summary>Reads a unit code.</summary>
    /// <param name="code">UCUM code, case-sensitive; null means missing.</param>
    /// <returns>The unit, or <see cref="UnitReasons.Unknown"/>.</returns>
    public static Computed<UnitDefinition> Parse(string? code) => code is not null && ByCode.TryGetValue(code, out var unit)
        ? Computed<UnitDefinition>.Of(unit)
        : Computed<UnitDefinition>.None(UnitReasons.Unknown);

    /// <summary>Whether two codes measure the same thing.</summary>
    /// <param name="one">UCUM code.</param>
    /// <param name="other">UCUM code.</param>
    /// <returns>True when both are known and of one dimension.</returns>
    public static bool SameDimension(string? one, string? other) =>
        UnitCodes.DimensionOf(one) is { } dimension && dimension == UnitCodes.DimensionOf(other);

    /// <summary>Converts a value.</summary>
    /// <param name="value">Finite number in <paramref name="from"/>.</param>
    /// <param name="from">UCUM code.</param>
    /// <param name="to">UCUM code of the same dimension.</param>
    /// <returns>The number in <paramref name="to"/>; none when a unit is unknown, foreign, or the value not finite.</returns>
    /// <remarks>There and back returns the entry to 12 digits. Reference: 11-units.csv, factor, F_to_C.</remarks>
    public static Computed<double> Convert(double value, string? from, string? to) =>
        from is not null && ByCode.TryGetValue(from, out var source) && to is not null && ByCode.TryGetValue(to, out var target)
            ? Convert(value, source, target)
            : Computed<double>.None(UnitReasons.Unknown);

    /// <summary>Converts a standard uncertainty or any other difference: a factor, never an offset.</summary>
    /// <param name="difference">Finite number in <paramref name="from"/>.</param>
    /// <param name="from">UCUM code.</param>
    /// <param name="to">UCUM code of the same dimension.</param>
    /// <returns>The difference in <paramref name="to"/>; none as for <see cref="Convert(double, string?, string?)"/>.</returns>
    /// <remarks>Reference: 11-units.csv, dF_to_dC.</remarks>
    public static Computed<double> ConvertDifference(double difference, string? from, string? to) =>
        Parse(from).Then(source => Parse(to).Then(target => Convert(difference, source with { Offset = 0 }, target with { Offset = 0 })));

    /// <summary>Reads a conductivity.</summary>
    /// <param name="value">Number in <paramref name="unit"/>.</param>
    /// <param name="unit">"uS/cm" or "mS/cm", at 25 °C.</param>
    /// <returns>The quantity, or the reason.</returns>
    public static Computed<Conductivity> ToConductivity(double value, string? unit) =>
        NotNegative(value, unit, "uS/cm").Map(Conductivity.FromMicrosiemensPerCm);

    /// <summary>Reads a volume.</summary>
    /// <param name="value">Number in <paramref name="unit"/>.</param>
    /// <param name="unit">"L", "mL", "m3", "[gal_us]", "[gal_br]" or "[cft_i]".</param>
    /// <returns>The quantity, or the reason.</returns>
    public static Computed<Volume> ToVolume(double value, string? unit) => NotNegative(value, unit, "L").Map(Volume.FromLitres);

    /// <summary>Reads a flow.</summary>
    /// <param name="value">Number in <paramref name="unit"/>.</param>
    /// <param name="unit">"L/h" or "[gal_us]/min".</param>
    /// <returns>The quantity, or the reason.</returns>
    public static Computed<Flow> ToFlow(double value, string? unit) => NotNegative(value, unit, "L/h").Map(Flow.FromLitresPerHour);

    /// <summary>Reads a mass.</summary>
    /// <param name="value">Number in <paramref name="unit"/>.</param>
    /// <param name="unit">"kg" or "[lb_av]".</param>
    /// <returns>The quantity, or the reason.</returns>
    public static Computed<Mass> ToMass(double value, string? unit) => NotNegative(value, unit, "kg").Map(Mass.FromKilograms);

    /// <summary>Reads a temperature.</summary>
    /// <param name="value">Number in <paramref name="unit"/>.</param>
    /// <param name="unit">"Cel" or "[degF]".</param>
    /// <returns>The quantity, or the reason.</returns>
    public static Computed<Temperature> ToTemperature(double value, string? unit) => Convert(value, unit, "Cel").Then(celsius =>
        celsius >= -273.15 ? Computed<Temperature>.Of(Temperature.FromCelsius(celsius)) : Computed<Temperature>.None(UnitReasons.Impossible));

    /// <summary>Reads a pH.</summary>
    /// <param name="value">0 to 14.</param>
    /// <param name="unit">"[pH]".</param>
    /// <returns>The quantity, or the reason.</returns>
    public static Computed<Ph> ToPh(double value, string? unit) => Convert(value, unit, "[pH]").Then(ph =>
        ph is >= 0 and <= 14 ? Computed<Ph>.Of(Ph.From(ph)) : Computed<Ph>.None(UnitReasons.Impossible));

    /// <summary>Reads a concentration.</summary>
    /// <param name="value">Number in <paramref name="unit"/>.</param>
    /// <param name="unit">"mg/L" or "ug/L".</param>
    /// <param name="basis">What it is expressed as.</param>
    /// <returns>The quantity, or the reason.</returns>
    public static Computed<Concentration> ToConcentration(double value, string? unit, string basis) =>
        NotNegative(value, unit, "mg/L").Map(mgPerL => new Concentration(mgPerL, basis));

    /// <summary>Trade "ppm" by mass into mg/L.</summary>
    /// <param name="ppmByMass">mg in a kg of water, finite, not negative.</param>
    /// <param name="densityKgPerL">Density of the water, kg/L, above zero.</param>
    /// <returns>mg/L; none for a density of zero or less.</returns>
    /// <remarks>Equal only at 1.000 kg/L. Reference: 11-units.csv, ppm_to_mgL.</remarks>
    public static Computed<double> PpmByMassToMgPerL(double ppmByMass, double densityKgPerL) =>
        double.IsFinite(ppmByMass) && ppmByMass >= 0 && double.IsFinite(densityKgPerL) && densityKgPerL > 0
            ? Computed<double>.Of(ppmByMass * densityKgPerL)
            : Computed<double>.None(UnitReasons.Impossible);

    private static Computed<double> Convert(double value, UnitDefinition from, UnitDefinition to)
    {
        if (from.Dimension != to.Dimension)
        {
            return Computed<double>.None(UnitReasons.Foreign);
        }

        // The same unit passes through untouched, so that what was entered is what is shown.
        var converted = from == to ? value : ((value + from.Offset) * from.Factor / to.Factor) - to.Offset;
        return double.IsFinite(converted) ? Computed<double>.Of(converted) : Computed<double>.None(UnitReasons.Impossible);
    }

    private static Computed<double> NotNegative(double value, string? unit, string baseUnit) => Convert(value, unit, baseUnit).Then(number =>
        number >= 0 ? Computed<double>.Of(number) : Computed<double>.None(UnitReasons.Impossible));
}
