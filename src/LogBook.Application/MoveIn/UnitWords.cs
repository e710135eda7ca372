using System.Text.RegularExpressions;

namespace LogBook.Application.MoveIn;

/// <summary>Units as people write them in headings and cells. What may be two units is told as such, never chosen.</summary>
public static partial class UnitWords
{
    // Plain letters: accents, case and superscripts are gone. "ppm" in dilute water is mg/L; gallons and degrees may be two things.
    private static readonly (string Word, string[] Units)[] Known =
    [
        ("us gal", ["[gal_us]"]), ("us gallons", ["[gal_us]"]), ("gal us", ["[gal_us]"]), ("usg", ["[gal_us]"]), ("imp gal", ["[gal_br]"]), ("imperial gallons", ["[gal_br]"]), ("uk gal", ["[gal_br]"]),
        ("gal ee uu", ["[gal_us]"]), ("gal eua", ["[gal_us]"]), ("gallons", ["[gal_us]", "[gal_br]"]), ("gallon", ["[gal_us]", "[gal_br]"]), ("gal", ["[gal_us]", "[gal_br]"]), ("galones", ["[gal_us]", "[gal_br]"]), ("galoes", ["[gal_us]", "[gal_br]"]),
        ("us/cm", ["uS/cm"]), ("microsiemens", ["uS/cm"]), ("umhos", ["uS/cm"]), ("umho/cm", ["uS/cm"]), ("umhos/cm", ["uS/cm"]), ("μs/cm", ["uS/cm"]), ("μs", ["uS/cm"]), ("us", ["uS/cm"]), ("ms/cm", ["mS/cm"]), ("ms", ["mS/cm"]),
        ("mg/l", ["mg/L"]), ("ppm", ["mg/L"]), ("ug/l", ["ug/L"]), ("μg/l", ["ug/L"]), ("ppb", ["ug/L"]),
        ("degc", ["Cel"]), ("°c", ["Cel"]), ("oc", ["Cel"]), ("celsius", ["Cel"]), ("degf", ["[degF]"]), ("°f", ["[degF]"]), ("fahrenheit", ["[degF]"]), ("deg", ["Cel", "[degF]"]), ("°", ["Cel", "[degF]"]),
        ("m3", ["m3"]), ("cubic metres", ["m3"]), ("cubic meters", ["m3"]), ("ft3", ["[cft_i]"]), ("cubic feet", ["[cft_i]"]), ("litres", ["L"]), ("liters", ["L"]), ("litros", ["L"]), ("ltr", ["L"]), ("l", ["L"]), ("ml", ["mL"]),
        ("cm", ["cm"]), ("in", ["[in_i]"]), ("inch", ["[in_i]"]), ("inches", ["[in_i]"]), ("%", ["%"]), ("kg", ["kg"]), ("lb", ["[lb_av]"]), ("lbs", ["[lb_av]"]), ("h", ["h"]), ("hrs", ["h"]), ("hours", ["h"]), ("horas", ["h"]), ("mv", ["mV"]),
        ("cfu/ml", ["[CFU]/mL"]), ("ufc/ml", ["[CFU]/mL"]), ("cfu/100 ml", ["[CFU]/(100.mL)"]), ("cfu/100ml", ["[CFU]/(100.mL)"]), ("ufc/100ml", ["[CFU]/(100.mL)"]), ("cfu/l", ["[CFU]/L"]), ("ufc/l", ["[CFU]/L"]), ("ntu", ["{NTU}"]), ("kw", ["kW"]),
    ];

    /// <summary>Units that a text as a whole may name: one, two where it is not clear, none where it names none.</summary>
    public static IReadOnlyList<string> Of(string text)
    {
        var plain = Headings.KeyOf(text).Trim('(', ')', '[', ']', '.', ' ').Replace(".", "", StringComparison.Ordinal);
        foreach (var (word, units) in Known)
        {
            if (plain == word)
            {
                return units;
            }
        }

        return [];
    }

    /// <summary>Units that a heading names: in brackets, behind a comma, or as its last word.</summary>
    public static IReadOnlyList<string> InHeading(string heading)
    {
        ArgumentNullException.ThrowIfNull(heading);
        foreach (Match bracket in Brackets().Matches(heading))
        {
            if (Of(bracket.Groups["u"].Value) is { Count: > 0 } units)
            {
                return units;
            }
        }

        var parts = heading.Split([',', '·', '\n', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        foreach (var part in parts.Reverse())
        {
            if (Of(part) is { Count: > 0 } units)
            {
                return units;
            }

            var words = part.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            for (var count = Math.Min(2, words.Length - 1); count >= 1; count--)
            {
                var tail = string.Join(' ', words[^count..]);

                // "us" and "in" are words too: as the last word of a heading they name a unit only in brackets.
                if (Of(tail) is { Count: > 0 } last && Headings.KeyOf(tail) is not ("us" or "in" or "l" or "h" or "hours" or "horas"))
                {
                    return last;
                }
            }
        }

        return [];
    }

    [GeneratedRegex(@"[\(\[](?<u>[^\)\]]{1,30})[\)\]]", RegexOptions.CultureInvariant, 1000)]
    private static partial Regex Brackets();
}
