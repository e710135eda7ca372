using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Compensation;

/// <summary>Conductivity of potassium chloride standards.</summary>
/// <remarks>
/// For 0.01: 1412 (mol/L, Standard Methods), 1413 (older solutions) and 1408 (mol/kg, NIST 2001) are definitions, not errors.
/// Reference: 04-conductivity.csv, kcl_standard; 04-kcl-temperature.csv.
/// </remarks>
public static class KclStandards
{
    // Standard Methods 2510 Table I, mol/L and µS/cm at 25 °C.
    private static readonly (double Molar, double UsPerCm)[] Molar =
    [
        (0.0001, 14.9), (0.0005, 73.9), (0.001, 146.9), (0.005, 717.5), (0.01, 1412), (0.02, 2765),
        (0.05, 6667), (0.1, 12890), (0.2, 24800), (0.5, 58670), (1, 111900),
    ];

    // Pratt et al., Pure Appl. Chem. 73 (2001) 1783, as in the CRC Handbook: °C, then 0.01, 0.1 and 1 mol/kg in µS/cm.
    private static readonly (double Celsius, double At001, double At01, double? At1)[] Molal =
    [
        (0, 772.92, 7116.85, 63488), (5, 890.96, 8183.7, 72030), (10, 1013.95, 9291.72, 80844), (15, 1141.45, 10437.1, 89900),
        (18, 1219.93, 11140.6, null), (20, 1273.03, 11615.9, 99170), (25, 1408.23, 12824.6, 108620), (30, 1546.63, 14059.2, 118240),
        (35, 1687.79, 15316.0, 127970), (40, 1831.27, 16591.0, 137810), (45, 1976.62, 17880.6, 147720), (50, 2123.43, 19180.9, 157670),
    ];

    /// <summary>A standard by amount in a litre, at 25 °C.</summary>
    /// <param name="molPerL">One of 0.0001, 0.0005, 0.001, 0.005, 0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1.</param>
    /// <returns>Conductivity; none for another strength.</returns>
    public static Computed<Conductivity> AtMolarity(double molPerL)
    {
        var row = Array.Find(Molar, standard => standard.Molar == molPerL);
        return row.UsPerCm > 0
            ? Computed<Conductivity>.Of(Conductivity.FromMicrosiemensPerCm(row.UsPerCm))
            : Computed<Conductivity>.None(CompensationReasons.NoSuchStandard);
    }

    /// <summary>A standard by amount in a kilogram of water, at a temperature.</summary>
    /// <param name="molPerKg">0.01, 0.1 or 1.</param>
    /// <param name="temperature">0 to 50 °C; straight lines between the rows (5 °C apart, within 0.1 %).</param>
    /// <returns>Conductivity at that temperature; none for another strength or outside the range.</returns>
    public static Computed<Conductivity> AtMolality(double molPerKg, Temperature temperature)
    {
        Func<(double Celsius, double At001, double At01, double? At1), double?>? column = molPerKg switch
        {
            0.01 => row => row.At001,
            0.1 => row => row.At01,
            1 => row => row.At1,
            _ => null,
        };
        if (column is null)
        {
            return Computed<Conductivity>.None(CompensationReasons.NoSuchStandard);
        }

        var t = temperature.Celsius;
        var rows = Molal.Where(row => column(row) is not null).Select(row => (row.Celsius, UsPerCm: column(row)!.Value)).ToList();
        if (t < rows[0].Celsius || t > rows[^1].Celsius)
        {
            return Computed<Conductivity>.None(CompensationReasons.OutsideRange);
        }

        var above = rows.FindIndex(row => row.Celsius >= t);
        var (high, low) = (rows[above], rows[Math.Max(0, above - 1)]);
        var share = high.Celsius == low.Celsius ? 0 : (t - low.Celsius) / (high.Celsius - low.Celsius);
        return Computed<Conductivity>.Of(Conductivity.FromMicrosiemensPerCm(low.UsPerCm + (share * (high.UsPerCm - low.UsPerCm))));
    }
}
