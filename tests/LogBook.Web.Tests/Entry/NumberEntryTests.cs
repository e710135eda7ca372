using System.Globalization;
using LogBook.Domain.Languages;
using LogBook.Domain.Numbers;

namespace LogBook.Web.Tests.Entry;

public sealed class NumberEntryTests
{
    // Habits of the four locales: decimal sign, sign between thousands (Unicode CLDR, numbers).
    private static readonly (string Locale, Language Language, char Point, char[] Groups)[] Locales =
    [
        ("en-US", Language.English, '.', [',']),
        ("es-MX", Language.Spanish, '.', [',']),
        ("es-ES", Language.Spanish, ',', ['.', '\u00a0', '\u202f', ' ']),
        ("pt-BR", Language.Portuguese, ',', ['.']),
    ];

    // Keys as pressed ("<-" is the key that deletes) and what must come of them: a number, "ask a|b", or "none".
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

    public static TheoryData<string> Rows => [.. Handwritten.Split('\n', StringSplitOptions.RemoveEmptyEntries)];

    [Theory]
    [MemberData(nameof(Rows))]
    [Trait("goal", "U1")]
    public void Parse_KeySequence_IsNumberOrQuestionOrKeptText(string row)
    {
        var at = row.LastIndexOf(" = ", StringComparison.Ordinal);
        var text = Press(row[..at].TrimStart());
        var expected = row[(at + 3)..].Trim();

        foreach (var (locale, language, _, _) in Locales)
        {
            var reading = InCulture(locale, () => NumberEntry.Parse(text, language));

            Assert.Equal(expected, Said(reading));
        }
    }

    [Fact]
    [Trait("goal", "U1")]
    public void Parse_ManySequencesInFourLocales_NoneIsStoredDifferentlyWithoutAQuestion()
    {
        var sequences = 0;
        foreach (var (locale, language, point, groups) in Locales)
        {
            var ofLocale = 0;
            foreach (var (keys, meant) in Written(point, groups))
            {
                var reading = InCulture(locale, () => NumberEntry.Parse(keys, language));

                Assert.True(
                    (reading.Kind == NumberReadingKind.Understood && reading.Value == meant) || (reading.Kind == NumberReadingKind.Ask && reading.Choices.Contains(meant)),
                    $"{locale}: {keys} means {meant.ToString(CultureInfo.InvariantCulture)}, read as {Said(reading)}");
                ofLocale++;
            }

            Assert.True(ofLocale >= 200, $"{locale}: {ofLocale} sequences");
            sequences += ofLocale;
        }

        Assert.True(sequences >= 800);
    }

    [Theory]
    [InlineData(Language.English, "1,234", 1234)]
    [InlineData(Language.English, "1.234", 1.234)]
    [InlineData(Language.Spanish, "1.234", 1234)]
    [InlineData(Language.Portuguese, "1,234", 1.234)]
    public void Parse_ThreeDigitsBehindOneSign_OffersTheHabitOfTheLanguageFirst(Language language, string text, double first)
    {
        Assert.Equal(first, NumberEntry.Parse(text, language).Choices[0]);
    }

    [Fact]
    public void Settled_AnswerThatIsNoChoice_GivesNoNumber()
    {
        var reading = NumberEntry.Parse("1.234", Language.English);

        Assert.Null(reading.Settled(null));
        Assert.Null(reading.Settled(99));
        Assert.Equal(1234, reading.Settled(1234));
    }

    // What a person of the locale presses for a number that is known beforehand: plain, with the other decimal sign, grouped.
    private static IEnumerable<(string Keys, double Meant)> Written(char point, char[] groups)
    {
        string[] wholes = ["0", "7", "12", "98", "135", "1350", "13500", "48211", "9990075"];
        string[] fractions = ["", "0", "5", "25", "50", "125", "1250", "00", "075"];
        foreach (var whole in wholes)
        {
            foreach (var fraction in fractions)
            {
                var meant = double.Parse(whole + "." + fraction + "0", CultureInfo.InvariantCulture);
                yield return (whole + (fraction.Length > 0 ? point + fraction : string.Empty), meant);
                if (fraction.Length > 0)
                {
                    yield return (whole + (point == '.' ? ',' : '.') + fraction, meant);
                }

                if (whole.Length > 3)
                {
                    foreach (var group in groups)
                    {
                        yield return (Grouped(whole, group) + (fraction.Length > 0 ? point + fraction : string.Empty), meant);
                    }
                }

                yield return ("-" + whole + (fraction.Length > 0 ? point + fraction : string.Empty), -meant);
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

    private static string Press(string keys)
    {
        var text = string.Empty;
        for (var i = 0; i < keys.Length; i++)
        {
            if (keys.AsSpan(i).StartsWith("<-", StringComparison.Ordinal))
            {
                text = text.Length > 0 ? text[..^1] : text;
                i++;
            }
            else
            {
                text += keys[i];
            }
        }

        return text;
    }

    private static string Said(NumberReading reading) => reading.Kind switch
    {
        NumberReadingKind.Understood => reading.Qualifier + reading.Value!.Value.ToString(CultureInfo.InvariantCulture),
        NumberReadingKind.Ask => "ask " + reading.Qualifier + string.Join('|', reading.Choices.Order().Select(c => c.ToString(CultureInfo.InvariantCulture))),
        NumberReadingKind.TooManyDigits => "long",
        NumberReadingKind.Empty => "empty",
        _ => "none",
    };

    private static NumberReading InCulture(string locale, Func<NumberReading> read)
    {
        var before = CultureInfo.CurrentCulture;
        CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(locale);
        try
        {
            return read();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
