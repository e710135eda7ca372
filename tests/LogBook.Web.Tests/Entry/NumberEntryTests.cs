using System.Globalization;
using LogBook.Domain.Languages;
using LogBook.Domain.Numbers;
using LogBook.Testing.Numbers;

namespace LogBook.Web.Tests.Entry;

public sealed class NumberEntryTests
{
    public static TheoryData<string> Rows => [.. KeySequences.ByHand.Select(sequence => sequence.ToString())];

    [Theory]
    [MemberData(nameof(Rows))]
    [Trait("goal", "U1")]
    public void Parse_KeySequence_IsNumberOrQuestionOrKeptText(string row)
    {
        var sequence = KeySequences.ByHand.Single(one => one.ToString() == row);

        foreach (var (locale, language, _, _) in KeySequences.Locales)
        {
            var reading = InCulture(locale, () => NumberEntry.Parse(sequence.Text, language));

            Assert.Equal(sequence.Said, KeySequences.Said(reading));
        }
    }

    [Fact]
    [Trait("goal", "U1")]
    public void Parse_ManySequencesInFourLocales_NoneIsStoredDifferentlyWithoutAQuestion()
    {
        var sequences = 0;
        foreach (var (locale, language, _, _) in KeySequences.Locales)
        {
            var ofLocale = 0;
            foreach (var sequence in KeySequences.WrittenIn(locale))
            {
                var reading = InCulture(locale, () => NumberEntry.Parse(sequence.Text, language));

                Assert.True(sequence.Allows(reading), $"{locale}: {sequence}, read as {KeySequences.Said(reading)}");
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
