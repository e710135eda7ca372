using LogBook.Domain.Languages;
using LogBook.Domain.Settings;
using LogBook.Domain.Visits;

namespace LogBook.Web.Features.Settings;

/// <summary>How settings read for people.</summary>
public static class SettingWords
{
    /// <summary>Name of a setting without its output.</summary>
    public static string Name(string name, Language language)
    {
        var field = SettingNames.FieldOf(name);
        return field switch
        {
            "maRange/at4Ma" => SettingsTexts.At4Ma.In(language),
            "maRange/at20Ma" => SettingsTexts.At20Ma.In(language),
            _ => Capital(VisitTexts.NameOfSetting(field).In(language)),
        };
    }

    /// <summary>A setting with its unit.</summary>
    public static string Value(ControllerSetting setting, Language language) => Value(setting.Name, setting.Value, setting.Unit, language);

    /// <summary>A value of a setting with its unit.</summary>
    public static string Value(string name, SettingValue? value, string? unit, Language language) => SettingValues.In(name, value, unit, language);

    /// <summary>Heading of a group of the sheet.</summary>
    public static string Heading(ReEntryGroup group, Language language) => group.Output is null
        ? SettingsTexts.NameOf(group.Purpose).In(language)
        : group.Product is null ? SettingsTexts.FeedOf.In(language, group.Output) : SettingsTexts.FeedOfProduct.In(language, group.Product.Name, group.Output);

    private static string Capital(string text) => text.Length == 0 ? text : char.ToUpperInvariant(text[0]) + text[1..];
}
