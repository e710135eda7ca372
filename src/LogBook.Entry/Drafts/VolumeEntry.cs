using LogBook.Domain.Quantities;

namespace LogBook.Entry.Drafts;

/// <summary>Amounts of product that a person may enter in another unit than the litres of the record.</summary>
public static class VolumeEntry
{
    /// <summary>Units offered.</summary>
    public static IReadOnlyList<string> Units { get; } = [UnitCodes.Litre, UnitCodes.UsGallon, UnitCodes.ImperialGallon, UnitCodes.Millilitre];

    /// <summary>Litres of an amount.</summary>
    /// <param name="amount">Amount in <paramref name="unit"/>.</param>
    /// <param name="unit">A unit of volume; litres when absent.</param>
    /// <returns>L; null for a unit that is none of volume.</returns>
    public static double? Litres(double amount, string? unit)
    {
        if (unit is null or "" or UnitCodes.Litre)
        {
            return amount;
        }

        var litres = Domain.Quantities.Units.Convert(amount, unit, UnitCodes.Litre);
        return litres.HasValue ? litres.Value : null;
    }
}
