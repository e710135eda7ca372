using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Reflection;
using System.Text.Json.Serialization;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Settings;

/// <summary>A programme as the list of its settings, and back: whatever decides what a controller does stands on the list.</summary>
/// <remarks>
/// Fuller than what a visit reads: week 1, direction of measured feeds and what a feed waits for are on it too, since a controller that has
/// lost them does something else.
/// </remarks>
public static class ProgrammeSettings
{
    /// <summary>All settings of a programme.</summary>
    /// <param name="programme">The programme.</param>
    /// <param name="system">Its system: the output of a feed that names none is that of the drum's only pump.</param>
    /// <returns>Settings with a value, in a fixed order. Feeds by hand and feeders of solid product have none.</returns>
    public static IReadOnlyList<ControllerSetting> Of(Programme programme, WaterSystem system)
    {
        var list = new List<ControllerSetting>();
        void Number(string name, double? value)
        {
            if (value is { } number)
            {
                list.Add(new ControllerSetting(name, SettingValue.Of(number), SettingNames.UnitOf(name, programme)));
            }
        }

        void Words(string name, string? text)
        {
            if (!string.IsNullOrEmpty(text))
            {
                list.Add(new ControllerSetting(name, SettingValue.Of(text), null));
            }
        }

        Number("setPointUsPerCm", programme.SetPointUsPerCm);
        Number("differentialUsPerCm", programme.DifferentialUsPerCm);
        Words("bleedActs", programme.BleedActs is { } acts ? Code(acts) : null);
        Number("highAlarmUsPerCm", programme.HighAlarmUsPerCm);
        Number("lowAlarmUsPerCm", programme.LowAlarmUsPerCm);
        Number("longestBleedMin", programme.LongestBleedMin);
        Number("displayAverageSeconds", programme.DisplayAverageSeconds);
        Number("maRange/at4Ma", programme.MaRange?.At4Ma);
        Number("maRange/at20Ma", programme.MaRange?.At20Ma);
        if (programme.Feeds.Any(feed => feed.Mode == FeedMode.DosePlan))
        {
            Number("planWeeks", programme.PlanWeeks ?? PlanCalendar.UsualWeeks);
            Words("weekOneFrom", PlanCalendar.Anchor(programme).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture));
        }

        foreach (var feed in programme.Feeds)
        {
            if (OutputOf(feed, system) is { } output && feed.Mode is not (FeedMode.ByHand or FeedMode.Feeder))
            {
                list.AddRange(OfFeed(feed, output));
            }
        }

        return list;
    }

    /// <summary>All settings of one feed, in whatever mode.</summary>
    /// <param name="feed">The feed.</param>
    /// <param name="output">Code of its output, the first part of the names.</param>
    /// <returns>Settings with a value, in a fixed order; the mode is always there.</returns>
    public static IReadOnlyList<ControllerSetting> OfFeed(Feed feed, string output)
    {
        var list = new List<ControllerSetting>();
        void Number(string field, double? value, string? unit)
        {
            if (value is { } number)
            {
                list.Add(new ControllerSetting($"{output}/{field}", SettingValue.Of(number), unit));
            }
        }

        void Words(string field, string? text)
        {
            if (!string.IsNullOrEmpty(text))
            {
                list.Add(new ControllerSetting($"{output}/{field}", SettingValue.Of(text), null));
            }
        }

        Words("mode", Code(feed.Mode));
        Number("everyL", feed.EveryL, UnitCodes.Litre);
        Number("runSeconds", feed.RunSeconds, "s");
        Number("cycleMin", feed.CycleMin, UnitCodes.Minute);
        Number("sharePercent", feed.SharePercent, UnitCodes.Percent);
        Number("setPoint", feed.SetPoint, feed.Unit);
        Number("differential", feed.Differential, feed.Unit);
        Words("direction", feed.Direction is { } direction ? Code(direction) : null);
        Words("weeks", string.Join(',', feed.Weeks.Select(week => week.ToString(CultureInfo.InvariantCulture))));
        Words("days", string.Join(',', feed.Days.Select(Code)));
        Words("starts", string.Join(',', feed.Starts));
        Number("runMinutes", feed.RunMinutes, UnitCodes.Minute);
        Number("bleedDownFirst/minutes", feed.BleedDownFirst?.Minutes, UnitCodes.Minute);
        Number("bleedDownFirst/toUsPerCm", feed.BleedDownFirst?.ToUsPerCm, UnitCodes.MicrosiemensPerCm);
        Number("holdBleedShutMin", feed.HoldBleedShutMin, UnitCodes.Minute);
        Words("inhibitorMeanwhile", feed.InhibitorMeanwhile is { } meanwhile ? Code(meanwhile) : null);
        Number("longestFeedMin", feed.LongestFeedMin, UnitCodes.Minute);
        Words("waitsFor", string.Join(',', feed.WaitsFor));
        return list;
    }

    /// <summary>Output that drives a feed: its own, else that of the only pump on its drum.</summary>
    /// <param name="feed">The feed.</param>
    /// <param name="system">The system.</param>
    /// <returns>Code of the output, or null.</returns>
    public static string? OutputOf(Feed feed, WaterSystem system)
    {
        if (feed.Output is { } own)
        {
            return own;
        }

        var outputs = system.Pumps.Where(pump => pump.Drum.Equals(feed.Drum, StringComparison.OrdinalIgnoreCase)).Select(pump => pump.Output).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return outputs.Count == 1 ? outputs[0] : null;
    }

    /// <summary>Enters settings into a controller: what is entered holds from then on, a feed that is entered is entered whole.</summary>
    /// <param name="controller">What the controller holds.</param>
    /// <param name="settings">Settings to enter.</param>
    /// <param name="system">The system, for the drums behind the outputs.</param>
    /// <returns>What the controller holds afterwards. A value that cannot be read as its setting is left out.</returns>
    public static Programme Enter(Programme controller, IReadOnlyList<ControllerSetting> settings, WaterSystem system)
    {
        foreach (var setting in settings.Where(setting => SettingNames.OutputOf(setting.Name) is null))
        {
            controller = Enter(controller, setting);
        }

        var feeds = controller.Feeds.ToList();
        var entered = new List<Feed>();
        foreach (var group in settings.Where(setting => SettingNames.OutputOf(setting.Name) is not null).GroupBy(setting => SettingNames.OutputOf(setting.Name)!, StringComparer.OrdinalIgnoreCase))
        {
            var before = feeds.Find(feed => string.Equals(OutputOf(feed, system), group.Key, StringComparison.OrdinalIgnoreCase));
            var drum = before?.Drum ?? system.Pumps.FirstOrDefault(pump => pump.Output.Equals(group.Key, StringComparison.OrdinalIgnoreCase))?.Drum;
            if (drum is null || ModeOf(group) is not { } mode)
            {
                continue;
            }

            var feed = new Feed { Drum = drum, Output = group.Key, Mode = mode, TargetMgPerL = before?.TargetMgPerL };
            entered.Add(group.Aggregate(feed, Enter));
        }

        return controller with
        {
            Feeds = [.. entered, .. feeds.Where(feed => !entered.Exists(e => string.Equals(e.Output, OutputOf(feed, system), StringComparison.OrdinalIgnoreCase)))],
        };
    }

    private static FeedMode? ModeOf(IEnumerable<ControllerSetting> settings) =>
        settings.FirstOrDefault(setting => SettingNames.FieldOf(setting.Name) == "mode")?.Value.Text is { } text ? Parse<FeedMode>(text) : null;

    private static Programme Enter(Programme controller, ControllerSetting setting) => setting.Name switch
    {
        "setPointUsPerCm" => controller with { SetPointUsPerCm = Number(setting, "uS/cm") ?? controller.SetPointUsPerCm },
        "differentialUsPerCm" => controller with { DifferentialUsPerCm = Number(setting, "uS/cm") ?? controller.DifferentialUsPerCm },
        "bleedActs" => controller with { BleedActs = Parse<BleedActs>(setting.Value.Text) ?? controller.BleedActs },
        "highAlarmUsPerCm" => controller with { HighAlarmUsPerCm = Number(setting, "uS/cm") ?? controller.HighAlarmUsPerCm },
        "lowAlarmUsPerCm" => controller with { LowAlarmUsPerCm = Number(setting, "uS/cm") ?? controller.LowAlarmUsPerCm },
        "longestBleedMin" => controller with { LongestBleedMin = Number(setting, "min") ?? controller.LongestBleedMin },
        "displayAverageSeconds" => controller with { DisplayAverageSeconds = Number(setting, "s") ?? controller.DisplayAverageSeconds },
        "planWeeks" => controller with { PlanWeeks = setting.Value.Number is { } weeks and >= 1 ? (int)weeks : controller.PlanWeeks },
        "weekOneFrom" => controller with
        {
            WeekOneFrom = DateOnly.TryParseExact(setting.Value.Text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : controller.WeekOneFrom,
        },
        _ => controller,
    };

    /// <summary>A feed with one of its settings entered; a value that cannot be read as that setting leaves it empty.</summary>
    internal static Feed Enter(Feed feed, ControllerSetting setting) => SettingNames.FieldOf(setting.Name) switch
    {
        "everyL" => feed with { EveryL = Number(setting, "L") },
        "runSeconds" => feed with { RunSeconds = Number(setting, "s") },
        "cycleMin" => feed with { CycleMin = Number(setting, "min") },
        "sharePercent" => feed with { SharePercent = Number(setting, "%") },
        "setPoint" => feed with { SetPoint = setting.Value.Number, Unit = setting.Unit },
        "differential" => feed with { Differential = setting.Value.Number },
        "direction" => feed with { Direction = Parse<FeedDirection>(setting.Value.Text) },
        "weeks" => feed with { Weeks = [.. Parts(setting).Select(part => int.TryParse(part, NumberStyles.None, CultureInfo.InvariantCulture, out var week) ? week : 0).Where(week => week > 0)] },
        "days" => feed with { Days = [.. Parts(setting).Select(Parse<Weekday>).OfType<Weekday>()] },
        "starts" => feed with { Starts = Parts(setting) },
        "runMinutes" => feed with { RunMinutes = Number(setting, "min") },
        "bleedDownFirst/minutes" => feed with { BleedDownFirst = (feed.BleedDownFirst ?? new BleedDown()) with { Minutes = Number(setting, "min") } },
        "bleedDownFirst/toUsPerCm" => feed with { BleedDownFirst = (feed.BleedDownFirst ?? new BleedDown()) with { ToUsPerCm = Number(setting, "uS/cm") } },
        "holdBleedShutMin" => feed with { HoldBleedShutMin = Number(setting, "min") },
        "inhibitorMeanwhile" => feed with { InhibitorMeanwhile = Parse<InhibitorMeanwhile>(setting.Value.Text) },
        "longestFeedMin" => feed with { LongestFeedMin = Number(setting, "min") },
        "waitsFor" => feed with { WaitsFor = Parts(setting) },
        _ => feed,
    };

    // A controller may show another unit than the programme keeps; a unit that does not fit is no number of that setting.
    private static double? Number(ControllerSetting setting, string unit) => setting.Value.Number is not { } number ? null
        : setting.Unit is null || setting.Unit == unit ? number
        : Units.Convert(number, setting.Unit, unit) is { HasValue: true, Value: var converted } ? converted : null;

    private static string[] Parts(ControllerSetting setting) => setting.Value.IsNone
        ? []
        : setting.Value.ToString().Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static string Code<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>(T value)
        where T : struct, Enum => typeof(T).GetField(value.ToString())!.GetCustomAttribute<JsonStringEnumMemberNameAttribute>()!.Name;

    private static T? Parse<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicFields)] T>(string? text)
        where T : struct, Enum
    {
        foreach (var value in Enum.GetValues<T>())
        {
            if (Code(value) == text)
            {
                return value;
            }
        }

        return null;
    }
}
