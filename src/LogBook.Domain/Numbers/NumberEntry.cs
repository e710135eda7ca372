using System.Globalization;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Numbers;

/// <summary>
/// Reads a number as people type it, whatever decimal sign they use. It never guesses: what could be two numbers is asked,
/// what is none stays as typed.
/// </summary>
/// <remarks>
/// A browser's or a control library's own number box drops keys it does not expect, so that "2,5" became 25.
/// Here one separator of either kind is the decimal sign; of two kinds the last is; exactly three digits behind a single
/// separator may be thousands and are asked.
/// </remarks>
public static class NumberEntry
{
    // A double keeps every number of 15 significant digits.
    private const int MostDigits = 15;

    /// <summary>Reads a text.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="language">Orders the choices when it has to be asked: the habit of the language comes first.</param>
    /// <returns>What was understood.</returns>
    public static NumberReading Parse(string? text, Language language)
    {
        var rest = Normal(text);
        if (rest.Length == 0)
        {
            return NumberReading.Empty;
        }

        string? qualifier = null;
        if (rest[0] is '<' or '>')
        {
            qualifier = rest[..1];
            rest = rest[1..].TrimStart();
        }

        var negative = false;
        if (rest.Length > 0 && rest[0] is '-' or '+')
        {
            negative = rest[0] == '-';
            rest = rest[1..];
        }

        return Power(rest, negative, qualifier) ?? Plain(rest, negative, qualifier, language);
    }

    private static string Normal(string? text) => (text ?? string.Empty)
        .Replace('\u00a0', ' ').Replace('\u202f', ' ').Replace('\u2009', ' ').Replace('\u2212', '-').Trim();

    // Counts of colonies are often written as powers of ten; a slip of the key looks the same, so it is asked.
    private static NumberReading? Power(string text, bool negative, string? qualifier)
    {
        var at = text.IndexOfAny(['e', 'E', '^']);
        if (at <= 0 || at == text.Length - 1)
        {
            return null;
        }

        var head = text[..at];
        var tail = text[(at + 1)..];
        if (tail.Length > 1 || !tail.All(char.IsAsciiDigit) || !head.All(char.IsAsciiDigit) || head.Length > 3 || (text[at] == '^' && head != "10"))
        {
            return null;
        }

        var value = double.Parse(text[at] == '^' ? "1e" + tail : head + "e" + tail, CultureInfo.InvariantCulture);
        return new NumberReading(NumberReadingKind.Ask, null, qualifier, [negative ? -value : value]);
    }

    private static NumberReading Plain(string text, bool negative, string? qualifier, Language language)
    {
        var none = new NumberReading(NumberReadingKind.NotANumber, null, qualifier, []);
        if (!text.Any(char.IsAsciiDigit) || !text.All(c => char.IsAsciiDigit(c) || c is '.' or ',' or ' '))
        {
            return none;
        }

        if (text.Count(char.IsAsciiDigit) > MostDigits)
        {
            return none with { Kind = NumberReadingKind.TooManyDigits };
        }

        var signs = text.Where(c => c is '.' or ',').ToArray();
        var kinds = signs.Distinct().Count();
        if (signs.Length == 0)
        {
            return WellGrouped(text, ' ') ? Of(text, string.Empty, negative, qualifier) : none;
        }

        if (kinds == 1 && signs.Length > 1)
        {
            return WellGrouped(text, signs[0]) ? Of(text, string.Empty, negative, qualifier) : none;
        }

        var at = text.LastIndexOf(signs[^1]);
        var whole = text[..at];
        var fraction = text[(at + 1)..];
        if (!fraction.All(char.IsAsciiDigit))
        {
            return none;
        }

        if (kinds == 2)
        {
            var group = signs[^1] == '.' ? ',' : '.';
            return whole.Contains(signs[^1]) || !WellGrouped(whole, group) ? none : Of(whole, fraction, negative, qualifier);
        }

        if (whole.Length > 0 && !WellGrouped(whole, ' '))
        {
            return none;
        }

        var maybeThousands = fraction.Length == 3 && whole.Length is > 0 and <= 3 && whole[0] != '0';
        return maybeThousands ? Thousands(whole, fraction, signs[0], negative, qualifier, language) : Of(whole, fraction, negative, qualifier);
    }

    private static NumberReading Thousands(string whole, string fraction, char sign, bool negative, string? qualifier, Language language)
    {
        var grouped = Number(whole + fraction, string.Empty, negative);
        var broken = Number(whole, fraction, negative);
        var habit = language == Language.English ? ',' : '.';
        return new NumberReading(NumberReadingKind.Ask, null, qualifier, sign == habit ? [grouped, broken] : [broken, grouped]);
    }

    // The first group has one to three digits, every other exactly three.
    private static bool WellGrouped(string text, char separator)
    {
        var groups = text.Split(separator);
        return groups.All(g => g.Length > 0 && g.All(char.IsAsciiDigit))
            && (groups.Length == 1 || (groups[0].Length <= 3 && groups.Skip(1).All(g => g.Length == 3)));
    }

    private static NumberReading Of(string whole, string fraction, bool negative, string? qualifier) =>
        new(NumberReadingKind.Understood, Number(whole, fraction, negative), qualifier, []);

    private static double Number(string whole, string fraction, bool negative)
    {
        var digits = string.Concat(whole.Where(char.IsAsciiDigit));
        var value = double.Parse("0" + digits + "." + fraction + "0", CultureInfo.InvariantCulture);
        return negative ? -value : value;
    }
}
