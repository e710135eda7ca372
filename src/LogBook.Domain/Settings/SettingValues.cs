using System.Globalization;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>Values of settings in words: numbers with their unit, codes of closed lists in the reader's language.</summary>
public static class SettingValues
{
    private static readonly Text NotThere = new("no such setting", "sin ese ajuste", "sem esse ajuste");

    /// <summary>A value in one language.</summary>
    /// <param name="name">Name of the setting in the exchange format.</param>
    /// <param name="value">The value; null is a dash.</param>
    /// <param name="unit">UCUM unit of a number; "s" for seconds, null for none.</param>
    /// <param name="language">Language asked for.</param>
    /// <returns>The words; a code without words stays as it is.</returns>
    public static string In(string name, SettingValue? value, string? unit, Language language)
    {
        if (value is null)
        {
            return "–";
        }

        if (value.IsNone)
        {
            return NotThere.In(language);
        }

        if (value.Number is { } number)
        {
            return string.IsNullOrEmpty(unit) ? Shown.Entered(number, language) : Shown.Entered(number, unit, language);
        }

        var text = value.Text!;
        if (SettingChoices.Of(name) is { } choices)
        {
            return Of(choices, text, language);
        }

        return SettingNames.FieldOf(name) switch
        {
            "days" => string.Join(", ", Parts(text).Select(day => Of(SettingChoices.Days, day, language))),
            "weekOneFrom" => DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? Shown.Day(day, language) : text,
            _ => string.Join(", ", Parts(text)),
        };
    }

    /// <summary>A value in all languages, to be said within a sentence.</summary>
    /// <param name="name">Name of the setting in the exchange format.</param>
    /// <param name="value">The value.</param>
    /// <param name="unit">UCUM unit of a number; "s" for seconds, null for none.</param>
    /// <returns>The words.</returns>
    public static Text Of(string name, SettingValue? value, string? unit) =>
        new(In(name, value, unit, Language.English), In(name, value, unit, Language.Spanish), In(name, value, unit, Language.Portuguese));

    private static string Of(IReadOnlyDictionary<string, Text> list, string code, Language language) => list.TryGetValue(code, out var text) ? text.In(language) : code;

    private static string[] Parts(string text) => text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
}
