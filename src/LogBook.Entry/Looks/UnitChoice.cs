using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;

namespace LogBook.Entry.Looks;

/// <summary>The unit that a field begins with in a system of units; a unit that was chosen at the field stays.</summary>
public static class UnitChoice
{
    /// <summary>Unit for a volume of product.</summary>
    /// <param name="units">System of units.</param>
    /// <returns>UCUM unit.</returns>
    public static string Volume(UnitSystem units) => units switch
    {
        UnitSystem.Us => UnitCodes.UsGallon,
        UnitSystem.Imperial => UnitCodes.ImperialGallon,
        _ => UnitCodes.Litre,
    };

    /// <summary>The unit of a list that a system of units begins with.</summary>
    /// <param name="offered">Units of the field.</param>
    /// <param name="units">System of units.</param>
    /// <returns>UCUM unit; null where the list has none of that system.</returns>
    public static string? Of(IReadOnlyList<string> offered, UnitSystem units)
    {
        string[] wanted = units switch
        {
            UnitSystem.Us => [UnitCodes.Fahrenheit, UnitCodes.Inch, UnitCodes.Pound, UnitCodes.UsGallon],
            UnitSystem.Imperial => [UnitCodes.ImperialGallon],
            _ => [UnitCodes.Celsius, UnitCodes.Centimetre, UnitCodes.Kilogram, UnitCodes.Litre],
        };
        return Array.Find(wanted, offered.Contains);
    }

    /// <summary>The same amount in the metric unit, for the echo beside an entry in another one.</summary>
    /// <param name="value">Amount.</param>
    /// <param name="unit">Its unit.</param>
    /// <returns>Amount and unit; null for a unit that is metric already or has no counterpart.</returns>
    public static (double Value, string Unit)? Metric(double value, string? unit)
    {
        var metric = unit switch
        {
            UnitCodes.UsGallon or UnitCodes.ImperialGallon => UnitCodes.Litre,
            UnitCodes.Fahrenheit => UnitCodes.Celsius,
            UnitCodes.Inch => UnitCodes.Centimetre,
            UnitCodes.Pound => UnitCodes.Kilogram,
            _ => null,
        };
        return metric is not null && Units.Convert(value, unit!, metric) is { HasValue: true } converted ? (converted.Value, metric) : null;
    }
}
