using System.Globalization;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Entry.Plans;

/// <summary>Settings of a programme by the names of the record.</summary>
public static class SettingList
{
    // A full walk at least every quarter; trade practice, the firm's own choice.
    private const double WalkEveryDays = 90;

    /// <summary>Settings that the controller should have.</summary>
    /// <param name="programme">Programme in force.</param>
    /// <param name="system">The system.</param>
    /// <returns>Those with a value, the ones for each visit first.</returns>
    public static IReadOnlyList<PlannedSetting> Of(Programme programme, WaterSystem system)
    {
        var settings = new List<PlannedSetting>();
        void Number(string name, double? value, string unit, bool eachVisit = false)
        {
            if (value is { } number)
            {
                settings.Add(new PlannedSetting(name, number, unit, eachVisit));
            }
        }

        void Words(string name, string value)
        {
            if (value.Length > 0)
            {
                settings.Add(new PlannedSetting(name, value, null, false));
            }
        }

        Number("setPointUsPerCm", programme.SetPointUsPerCm, UnitCodes.MicrosiemensPerCm, true);
        Number("differentialUsPerCm", programme.DifferentialUsPerCm, UnitCodes.MicrosiemensPerCm, true);
        Number("highAlarmUsPerCm", programme.HighAlarmUsPerCm, UnitCodes.MicrosiemensPerCm, true);
        Number("lowAlarmUsPerCm", programme.LowAlarmUsPerCm, UnitCodes.MicrosiemensPerCm, true);
        Number("longestBleedMin", programme.LongestBleedMin, UnitCodes.Minute, true);
        Number("displayAverageSeconds", programme.DisplayAverageSeconds, string.Empty);
        foreach (var feed in programme.Feeds)
        {
            var output = feed.Output ?? OnlyOutput(feed, system);
            if (output is null || feed.Mode is FeedMode.ByHand or FeedMode.Feeder)
            {
                continue;
            }

            Number(output + "/everyL", feed.EveryL, UnitCodes.Litre);
            Number(output + "/runSeconds", feed.RunSeconds, string.Empty);
            Number(output + "/cycleMin", feed.CycleMin, UnitCodes.Minute);
            Number(output + "/sharePercent", feed.SharePercent, UnitCodes.Percent);
            Number(output + "/longestFeedMin", feed.LongestFeedMin, UnitCodes.Minute);
            Number(output + "/setPoint", feed.SetPoint, feed.Unit ?? string.Empty);
            Number(output + "/differential", feed.Differential, feed.Unit ?? string.Empty);
            Words(output + "/weeks", string.Join(',', feed.Weeks.Select(w => w.ToString(CultureInfo.InvariantCulture))));
            Words(output + "/days", string.Join(',', feed.Days.Select(d => d.ToString()[..3].ToLowerInvariant())));
            Words(output + "/starts", string.Join(',', feed.Starts));
            Number(output + "/runMinutes", feed.RunMinutes, UnitCodes.Minute);
            Number(output + "/bleedDownFirst/minutes", feed.BleedDownFirst?.Minutes, UnitCodes.Minute);
            Number(output + "/bleedDownFirst/toUsPerCm", feed.BleedDownFirst?.ToUsPerCm, UnitCodes.MicrosiemensPerCm);
            Number(output + "/holdBleedShutMin", feed.HoldBleedShutMin, UnitCodes.Minute);
            Words(output + "/inhibitorMeanwhile", feed.InhibitorMeanwhile?.ToString().ToLowerInvariant() ?? string.Empty);
        }

        return settings;
    }

    /// <summary>Whether a full walk through the settings is due.</summary>
    /// <param name="settings">Settings of the programme.</param>
    /// <param name="visits">Earlier visits of the system, latest last.</param>
    /// <param name="today">What the visit at hand has found so far.</param>
    /// <param name="arrived">Arrival, UTC.</param>
    /// <returns>
    /// True when a setting was not read for 90 days, or when today or the last visit found an alarm, a power loss or a setting that
    /// was changed while nobody was here; what the last visit found asks no more once that visit has made the walk itself.
    /// </returns>
    public static bool WalkIsDue(IReadOnlyList<PlannedSetting> settings, IReadOnlyList<(DateTime Utc, VisitedSystem System)> visits, VisitedSystem today, DateTime arrived)
    {
        var earlier = visits.Select(v => v.System).ToList();
        if (AsksForWalk(today, earlier) || (earlier is [.. var before, var last] && AsksForWalk(last, before) && !settings.All(s => Reads(last, s))))
        {
            return true;
        }

        return settings.Any(s => !visits.Any(v => (arrived - v.Utc).TotalDays < WalkEveryDays && Reads(v.System, s)));
    }

    private static bool Reads(VisitedSystem visit, PlannedSetting setting) => visit.Settings.Any(r => r.Name == setting.Name && r.NotRead != true && r.Found is not null);

    private static bool AsksForWalk(VisitedSystem visit, List<VisitedSystem> before) =>
        visit.Alarms.Any(a => a.Standing == true) || visit.Events.Any(e => e.Type == EventType.PowerLost) || visit.Settings.Any(now => ChangedSince(before, now));

    // Found otherwise than it was left the time before: somebody or something changed it.
    private static bool ChangedSince(List<VisitedSystem> visits, SettingReading now)
    {
        var before = visits.Select(v => v.Settings.FirstOrDefault(r => r.Name == now.Name)).LastOrDefault(r => (r?.Left ?? r?.Found) is not null);
        return now.Found is not null && before is not null && (before.Left ?? before.Found) != now.Found;
    }

    private static string? OnlyOutput(Feed feed, WaterSystem system)
    {
        var outputs = system.Pumps.Where(p => p.Drum == feed.Drum).Select(p => p.Output).Distinct(StringComparer.OrdinalIgnoreCase).ToList();
        return outputs.Count == 1 ? outputs[0] : null;
    }
}
