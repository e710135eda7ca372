using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>One setting as found against as last left.</summary>
/// <param name="Name">Name of the setting.</param>
/// <param name="Left">As last left.</param>
/// <param name="Found">As found.</param>
/// <param name="Unit">Unit the controller shows, when it was entered.</param>
/// <param name="LeftAt">Visit at which it was left.</param>
/// <param name="IsChanged">Whether both differ beyond the display's step.</param>
public sealed record SettingsComparison(string Name, SettingValue Left, SettingValue Found, string? Unit, VisitFacts LeftAt, bool IsChanged)
{
    private const double WhenNoStep = 1e-9;

    /// <summary>Compares every setting that was read with what it was last left at.</summary>
    /// <param name="visit">The visit.</param>
    /// <returns>One entry for each setting that was read and has an earlier value.</returns>
    public static IReadOnlyList<SettingsComparison> Of(VisitFacts visit)
    {
        var all = new List<SettingsComparison>();
        foreach (var setting in visit.Record.Settings)
        {
            if (setting.NotRead != true && setting.Found is not null && LastLeft(visit, setting.Name) is { } last)
            {
                var changed = Differs(last.Value, setting) && !IsAgreed(visit, last.At, setting);
                all.Add(new SettingsComparison(setting.Name, last.Value.Left ?? last.Value.Found!, setting.Found!, setting.Unit, last.At, changed));
            }
        }

        return all;
    }

    private static (SettingReading Value, VisitFacts At)? LastLeft(VisitFacts visit, string name)
    {
        for (var earlier = visit.Previous; earlier is not null; earlier = earlier.Previous)
        {
            var settings = earlier.Record.Settings;
            for (var i = 0; i < settings.Count; i++)
            {
                if (settings[i].Name == name && settings[i].NotRead != true && (settings[i].Left ?? settings[i].Found) is not null)
                {
                    return (settings[i], earlier);
                }
            }
        }

        return null;
    }

    private static bool Differs(SettingReading before, SettingReading now)
    {
        var left = before.Left ?? before.Found!;
        var found = now.Found!;
        if (left.Number is not { } a || found.Number is not { } b)
        {
            return !string.Equals(left.ToString(), found.ToString(), StringComparison.Ordinal);
        }

        if (before.Unit is not null && now.Unit is not null && before.Unit != now.Unit)
        {
            var converted = Units.Convert(a, before.Unit, now.Unit);
            if (!converted.HasValue)
            {
                return true;
            }

            a = converted.Value;
        }

        var step = Math.Max(now.Step ?? 0, before.Step ?? 0);
        return Math.Abs(a - b) > Math.Max(step, WhenNoStep * Math.Abs(a)) * (1 + WhenNoStep);
    }

    // A programme that began since then and asks for just this value.
    private static bool IsAgreed(VisitFacts visit, VisitFacts since, SettingReading setting) =>
        visit.Programme is { } programme && programme.From > since.Day && setting.Found!.Number is { } found && ByProgramme(programme, setting.Name) is { } asked && Math.Abs(asked - found) <= Math.Max(setting.Step ?? 0, 1e-9);

    private static double? ByProgramme(Programme programme, string name)
    {
        var slash = name.IndexOf('/', StringComparison.Ordinal);
        if (slash < 0)
        {
            return name switch
            {
                "setPointUsPerCm" => programme.SetPointUsPerCm,
                "differentialUsPerCm" => programme.DifferentialUsPerCm,
                "highAlarmUsPerCm" => programme.HighAlarmUsPerCm,
                "lowAlarmUsPerCm" => programme.LowAlarmUsPerCm,
                "longestBleedMin" => programme.LongestBleedMin,
                _ => null,
            };
        }

        var feed = programme.Feeds.FirstOrDefault(f => string.Equals(f.Output, name[..slash], StringComparison.OrdinalIgnoreCase));
        return name[(slash + 1)..] switch
        {
            "everyL" => feed?.EveryL,
            "runSeconds" => feed?.RunSeconds,
            "runMinutes" => feed?.RunMinutes,
            "cycleMin" => feed?.CycleMin,
            "sharePercent" => feed?.SharePercent,
            "longestFeedMin" => feed?.LongestFeedMin,
            "holdBleedShutMin" => feed?.HoldBleedShutMin,
            "setPoint" => feed?.SetPoint,
            "differential" => feed?.Differential,
            _ => null,
        };
    }
}
