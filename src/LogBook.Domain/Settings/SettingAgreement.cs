using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>Whether two values of a setting are the same, whatever their units and however a list is written.</summary>
internal static class SettingAgreement
{
    private const double Hair = 1e-9;

    /// <summary>Compares a value with a setting.</summary>
    /// <param name="line">The setting with its unit.</param>
    /// <param name="value">The value.</param>
    /// <param name="unit">Its unit; null for that of the setting.</param>
    /// <param name="step">Last digit of the controller, in the unit of the value; null where it is not known.</param>
    /// <returns>Whether they agree. A unit that does not convert does not agree.</returns>
    /// <remarks>Numbers in two units agree where they do so within the digits in which either is written: 1,000 L is shown as 264.2 US gal.</remarks>
    public static bool Agrees(ControllerSetting line, SettingValue value, string? unit, double? step)
    {
        if (line.Value.Number is not { } want || value.Number is not { } have)
        {
            return string.Equals(Plain(line.Value), Plain(value), StringComparison.OrdinalIgnoreCase);
        }

        var within = step ?? 0;
        if (unit is not null && line.Unit is not null && unit != line.Unit)
        {
            var (converted, last) = (Units.Convert(have, unit, line.Unit), Units.Convert(Math.Max(step ?? 0, HalfLastDigit(have)), unit, line.Unit));
            if (!converted.HasValue || !last.HasValue)
            {
                return false;
            }

            (have, within) = (converted.Value, Math.Max(Math.Abs(last.Value), HalfLastDigit(want)));
        }

        return Math.Abs(want - have) <= Math.Max(within, Hair * Math.Abs(want)) * (1 + Hair);
    }

    // Of a number as it is written, up to six decimals.
    private static double HalfLastDigit(double number)
    {
        var digit = 1.0;
        for (var decimals = 0; decimals < 6 && Math.Abs(number - (Math.Round(number / digit) * digit)) > Hair * Math.Max(1, Math.Abs(number)); decimals++)
        {
            digit /= 10;
        }

        return digit / 2;
    }

    // "tue, fri" is "tue,fri".
    private static string Plain(SettingValue value) => string.Join(',', value.ToString().Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries));
}
