using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Simulation.Technicians;

/// <summary>Settings of a programme as a controller lists them, named as in the exchange format.</summary>
public static class SettingsList
{
    /// <summary>All settings of a programme.</summary>
    /// <param name="programme">Settings.</param>
    /// <returns>Name and value in a fixed order; what is not set is left out.</returns>
    public static IReadOnlyList<KeyValuePair<string, SettingValue>> Of(Programme programme)
    {
        var list = new List<KeyValuePair<string, SettingValue>>();
        void Number(string name, double? value)
        {
            if (value is { } number)
            {
                list.Add(new(name, SettingValue.Of(number)));
            }
        }

        void Words(string name, IEnumerable<string> values)
        {
            var text = string.Join(',', values);
            if (text.Length > 0)
            {
                list.Add(new(name, SettingValue.Of(text)));
            }
        }

        Number("setPointUsPerCm", programme.SetPointUsPerCm);
        Number("differentialUsPerCm", programme.DifferentialUsPerCm);
        Words("bleedActs", programme.BleedActs is { } acts ? [acts == BleedActs.OnRise ? "on-rise" : "on-fall"] : []);
        Number("displayAverageSeconds", programme.DisplayAverageSeconds);
        Number("highAlarmUsPerCm", programme.HighAlarmUsPerCm);
        Number("lowAlarmUsPerCm", programme.LowAlarmUsPerCm);
        Number("longestBleedMin", programme.LongestBleedMin);
        Number("planWeeks", programme.PlanWeeks);
        foreach (var feed in programme.Feeds.Where(f => f.Output is not null))
        {
            var prefix = feed.Output + "/";
            Words(prefix + "mode", [Mode(feed.Mode)]);
            Number(prefix + "everyL", feed.EveryL);
            Number(prefix + "runSeconds", feed.RunSeconds);
            Number(prefix + "cycleMin", feed.CycleMin);
            Number(prefix + "sharePercent", feed.SharePercent);
            Number(prefix + "longestFeedMin", feed.LongestFeedMin);
            Number(prefix + "setPoint", feed.SetPoint);
            Number(prefix + "differential", feed.Differential);
            Words(prefix + "weeks", feed.Weeks.Select(w => w.ToString(System.Globalization.CultureInfo.InvariantCulture)));
            Words(prefix + "days", feed.Days.Select(d => d.ToString()[..3].ToLowerInvariant()));
            Words(prefix + "starts", feed.Starts);
            Number(prefix + "runMinutes", feed.RunMinutes);
            Number(prefix + "bleedDownFirst/minutes", feed.BleedDownFirst?.Minutes);
            Number(prefix + "bleedDownFirst/toUsPerCm", feed.BleedDownFirst?.ToUsPerCm);
            Number(prefix + "holdBleedShutMin", feed.HoldBleedShutMin);
            Words(prefix + "inhibitorMeanwhile", feed.InhibitorMeanwhile is { } meanwhile ? [meanwhile.ToString().ToLowerInvariant()] : []);
        }

        return list;
    }

    private static string Mode(FeedMode mode) => mode switch
    {
        FeedMode.ByMakeUpVolume => "by-make-up-volume",
        FeedMode.AlongsideBleed => "alongside-bleed",
        FeedMode.FixedShare => "fixed-share",
        FeedMode.ShareOfLastBleed => "share-of-last-bleed",
        FeedMode.DosePlan => "dose-plan",
        FeedMode.ByOrp => "by-orp",
        FeedMode.ByPh => "by-ph",
        FeedMode.ByResidual => "by-residual",
        FeedMode.ByHand => "by-hand",
        _ => "feeder",
    };
}
