using System.Globalization;
using LogBook.Domain.Languages;
using LogBook.Domain.Numbers;

namespace LogBook.Testing.Numbers;

/// <summary>What people of four locales press in number boxes: the one list for the parser and for the boxes of a real browser.</summary>
public static class KeySequences
{
    // Keys as pressed and what must come of them in every locale: a number, "ask a|b", or "none".
    private const string Handwritten = """
        2,5 = 2.5
        2.5 = 2.5
        7..4 = none
        7,,4 = none
        12O = none
        1e3 = ask 1000
        1E3 = ask 1000
        10^4 = ask 10000
        2^4 = none
        1e = none
        e3 = none
        1e33 = none
        1.5e3 = none
        , = none
        . = none
        - = none
        .5 = 0.5
        ,5 = 0.5
        5. = 5
        5, = 5
        .500 = 0.5
        0.125 = 0.125
        0,125 = 0.125
        00,125 = 0.125
        1.234 = ask 1.234|1234
        1,234 = ask 1.234|1234
        12.345 = ask 12.345|12345
        12,345 = ask 12.345|12345
        135.000 = ask 135|135000
        135,000 = ask 135|135000
        1350.000 = 1350
        1350,125 = 1350.125
        1,234.5 = 1234.5
        1.234,5 = 1234.5
        1,234.567 = 1234.567
        1.234,567 = 1234.567
        1,23.5 = none
        1.23,5 = none
        1,2345.6 = none
        1,234,567 = 1234567
        1.234.567 = 1234567
        1,234,567.8 = 1234567.8
        1.234.567,8 = 1234567.8
        1.234,567,8 = none
        1,234.567.8 = none
        12,34,567 = none
        1 234 = 1234
        1 234,5 = 1234.5
        1 234.5 = 1234.5
        1 234 567 = 1234567
        12 5 = none
        1  234 = none
        1 234,567 = 1234.567
        -5 = -5
        −5 = -5
        +5 = 5
        --5 = none
        5- = none
        -0,5 = -0.5
        <5 = <5
        < 5 = <5
        >100 = >100
        <0,05 = <0.05
        <1.000 = ask <1|1000
        << 5 = none
        5< = none
        ≤5 = none
        ~5 = none
        5 mg/L = none
        12:30 = none
        5% = none
        1/2 = none
        12'345 = none
        ½ = none
        १२ = none
        ５ = none
        1_000 = none
        $5 = none
        123456789012345 = 123456789012345
        1234567890123456 = long
        48211<-0 = 48210
        2,5<-<-.5 = 2.5
        13500<- = 1350
        1.2345<- = ask 1.234|1234
        12<-<-<- = empty
        7.<-.4 = 7.4
        abc = none
        NaN = none
        Infinity = none
        0x10 = none
        1. 5 = none
        1 .5 = none
        0 = 0
        0,0 = 0
        000 = 0
        0.000 = 0
        """;

    /// <summary>Habits of the four locales: decimal sign, sign between thousands (Unicode CLDR, numbers).</summary>
    public static IReadOnlyList<(string Locale, Language Language, char Point, char[] Groups)> Locales { get; } =
    [
        ("en-US", Language.English, '.', [',']),
        ("es-MX", Language.Spanish, '.', [',']),
        ("es-ES", Language.Spanish, ',', ['.', '\u00a0', '\u202f', ' ']),
        ("pt-BR", Language.Portuguese, ',', ['.']),
    ];

    /// <summary>Sequences whose reading is written down by hand; it is the same in every locale.</summary>
    public static IReadOnlyList<KeySequence> ByHand { get; } = [.. Handwritten.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(Row)];

    /// <summary>Numbers that are known beforehand, as somebody of a locale presses them.</summary>
    /// <param name="locale">One of <see cref="Locales"/>.</param>
    public static IReadOnlyList<KeySequence> WrittenIn(string locale)
    {
        var (_, _, point, groups) = Locales.Single(one => one.Locale == locale);
        return [.. Written(point, groups)];
    }

    /// <summary>A reading in words: a number, "ask a|b", "none", "long" or "empty".</summary>
    /// <param name="reading">What was understood.</param>
    public static string Said(NumberReading reading) => reading.Kind switch
    {
        NumberReadingKind.Understood => reading.Qualifier + reading.Value!.Value.ToString(CultureInfo.InvariantCulture),
        NumberReadingKind.Ask => "ask " + reading.Qualifier + string.Join('|', reading.Choices.Order().Select(c => c.ToString(CultureInfo.InvariantCulture))),
        NumberReadingKind.TooManyDigits => "long",
        NumberReadingKind.Empty => "empty",
        _ => "none",
    };

    private static KeySequence Row(string row)
    {
        var at = row.LastIndexOf(" = ", StringComparison.Ordinal);
        return new(row[..at].TrimStart(), row[(at + 3)..].Trim(), null);
    }

    // What a person of the locale presses for a number that is known beforehand: plain, with the other decimal sign, grouped.
    private static IEnumerable<KeySequence> Written(char point, char[] groups)
    {
        string[] wholes = ["0", "7", "12", "98", "135", "1350", "13500", "48211", "9990075"];
        string[] fractions = ["", "0", "5", "25", "50", "125", "1250", "00", "075"];
        foreach (var whole in wholes)
        {
            foreach (var fraction in fractions)
            {
                var meant = double.Parse(whole + "." + fraction + "0", CultureInfo.InvariantCulture);
                yield return new(whole + (fraction.Length > 0 ? point + fraction : string.Empty), null, meant);
                if (fraction.Length > 0)
                {
                    yield return new(whole + (point == '.' ? ',' : '.') + fraction, null, meant);
                }

                if (whole.Length > 3)
                {
                    foreach (var group in groups)
                    {
                        yield return new(Grouped(whole, group) + (fraction.Length > 0 ? point + fraction : string.Empty), null, meant);
                    }
                }

                yield return new("-" + whole + (fraction.Length > 0 ? point + fraction : string.Empty), null, -meant);
            }
        }
    }

    private static string Grouped(string whole, char group)
    {
        var text = whole;
        for (var at = whole.Length - 3; at > 0; at -= 3)
        {
            text = text[..at] + group + text[at..];
        }

        return text;
    }
}
