using System.Globalization;

namespace LogBook.Domain.Findings;

/// <summary>What a register may have shown when it was written down wrong in one place.</summary>
internal static class MiswrittenDigits
{
    /// <summary>Whole numbers that differ from one written down by two neighbouring digits exchanged or by one digit off by one.</summary>
    /// <param name="written">Count as written, at least 0; parts of a count are dropped.</param>
    /// <returns>The counts, none of them the one written.</returns>
    public static IEnumerable<double> Of(double written)
    {
        var digits = Math.Floor(written).ToString("0", CultureInfo.InvariantCulture);
        var step = Math.Pow(10, digits.Length - 1);
        for (var i = 0; i < digits.Length; i++, step /= 10)
        {
            var digit = digits[i] - '0';
            if (i + 1 < digits.Length && digits[i + 1] - '0' is var next && next != digit)
            {
                yield return written + ((next - digit) * (step - (step / 10)));
            }

            if (digit < 9)
            {
                yield return written + step;
            }

            if (digit > 0)
            {
                yield return written - step;
            }
        }
    }
}
