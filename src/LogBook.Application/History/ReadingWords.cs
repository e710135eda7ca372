using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>A reading as people read it: with its qualifier and unit, as it was entered.</summary>
public static class ReadingWords
{
    /// <summary>The reading in every language.</summary>
    public static Text Of(Reading reading) => InAll(language => In(reading, language));

    /// <summary>The reading in one language.</summary>
    public static string In(Reading reading, Language language) => HistoryBuilder.ValueOf(reading) is { } value
        ? Value(value, reading.Unit, reading.Qualifier, language)
        : HistoryTexts.NotQuantifiable.In(language);

    /// <summary>A value with its qualifier before it.</summary>
    public static string Value(double value, string unit, string? qualifier, Language language) => qualifier switch
    {
        null => Shown.Entered(value, unit, language),
        _ => $"{qualifier} {Shown.Entered(value, unit, language)}",
    };

    internal static Text InAll(Func<Language, string> words) => new(words(Language.English), words(Language.Spanish), words(Language.Portuguese));
}
