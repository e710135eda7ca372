using LogBook.Domain.Languages;
using LogBook.Domain.Settings;
using LogBook.Domain.Visits;
using LogBook.Domain.Numbers;
using LogBook.Web.Features.SetUp;

namespace LogBook.Web.Features.Settings;

/// <summary>What a person typed beside a line of the sheet, as a value of that setting.</summary>
public static class ReadBackEntry
{
    /// <summary>Reads a text.</summary>
    /// <param name="line">The line it stands beside.</param>
    /// <param name="text">As typed.</param>
    /// <param name="language">Language of the person.</param>
    /// <returns>The value, or what is wrong with the text; null where nothing was typed.</returns>
    public static (SettingValue? Value, string? Problem)? Read(ReEntryLine line, string? text, Language language)
    {
        if (string.IsNullOrWhiteSpace(text))
        {
            return null;
        }

        var setting = line.Setting;
        if (setting.Value.Number is not { } expected)
        {
            return (SettingValue.Of(CodeOf(setting, text.Trim(), language)), null);
        }

        var name = SettingWords.Name(setting.Name, language);
        var read = NumberEntry.Parse(text, language);
        return read.Kind switch
        {
            NumberReadingKind.Understood => (SettingValue.Of(read.Value!.Value), null),
            NumberReadingKind.Ask when read.Choices.Count == 2 => (null, SettingsTexts.TwoMeanings.In(language, name, text.Trim(), Shown.Entered(read.Choices[0], language), Shown.Entered(read.Choices[1], language))),
            NumberReadingKind.Empty => null,
            _ => (null, SettingsTexts.NotANumber.In(language, name, text.Trim(), Shown.Entered(expected, language))),
        };
    }

    // A person types the words of the sheet; the record keeps codes. A list is compared part by part.
    private static string CodeOf(ControllerSetting setting, string text, Language language)
    {
        if (text.Equals(SettingWords.Value(setting, language), StringComparison.OrdinalIgnoreCase))
        {
            return setting.Value.ToString();
        }

        if (SettingNames.FieldOf(setting.Name) != "days")
        {
            return text;
        }

        return string.Join(',', text.Split([',', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(part => ChoiceTexts.Days.FirstOrDefault(day => day.Value.In(language).Equals(part, StringComparison.OrdinalIgnoreCase)).Key ?? part));
    }
}
