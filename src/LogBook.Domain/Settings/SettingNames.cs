using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Settings;

/// <summary>What the name of a setting tells: output, field, purpose, usual unit.</summary>
public static class SettingNames
{
    /// <summary>Output of a setting of a feed.</summary>
    /// <param name="name">Name of the setting.</param>
    /// <returns>Code of the output; null for a setting of the controller itself.</returns>
    public static string? OutputOf(string name)
    {
        var slash = name.IndexOf('/', StringComparison.Ordinal);
        return slash > 0 && !name.StartsWith("maRange/", StringComparison.Ordinal) ? name[..slash] : null;
    }

    /// <summary>Field of a setting, without its output.</summary>
    /// <param name="name">Name of the setting.</param>
    /// <returns>The field.</returns>
    public static string FieldOf(string name) => OutputOf(name) is { } output ? name[(output.Length + 1)..] : name;

    /// <summary>What a setting is for.</summary>
    /// <param name="name">Name of the setting.</param>
    /// <returns>Its group on the sheet.</returns>
    public static SettingPurpose PurposeOf(string name) => OutputOf(name) is not null ? SettingPurpose.Feed : name switch
    {
        "setPointUsPerCm" or "differentialUsPerCm" or "bleedActs" => SettingPurpose.Bleed,
        "highAlarmUsPerCm" or "lowAlarmUsPerCm" or "longestBleedMin" => SettingPurpose.Limits,
        "planWeeks" or "weekOneFrom" => SettingPurpose.Calendar,
        "displayAverageSeconds" or "maRange/at4Ma" or "maRange/at20Ma" or "maRange/unit" => SettingPurpose.Display,
        _ => SettingPurpose.Other,
    };

    /// <summary>Unit in which the programme keeps a setting.</summary>
    /// <param name="name">Name of the setting.</param>
    /// <param name="programme">Programme with the units of measured feeds, or null.</param>
    /// <returns>UCUM unit, "s" for seconds; null where it is none.</returns>
    public static string? UnitOf(string name, Programme? programme)
    {
        var feed = OutputOf(name) is { } output ? programme?.Feeds.FirstOrDefault(f => string.Equals(f.Output, output, StringComparison.OrdinalIgnoreCase)) : null;
        return FieldOf(name) switch
        {
            "setPoint" or "differential" => feed?.Unit,
            "maRange/at4Ma" or "maRange/at20Ma" => programme?.MaRange?.Unit,
            var field when field.EndsWith("UsPerCm", StringComparison.Ordinal) => UnitCodes.MicrosiemensPerCm,
            var field when field.EndsWith("Min", StringComparison.Ordinal) || field.EndsWith("inutes", StringComparison.Ordinal) => UnitCodes.Minute,
            var field when field.EndsWith("Seconds", StringComparison.Ordinal) => "s",
            "everyL" => UnitCodes.Litre,
            "sharePercent" => UnitCodes.Percent,
            _ => null,
        };
    }
}
