using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Estimates;

/// <summary>Whether the water at a visit tells about the plant's steady running (findings, rule 1).</summary>
internal static class Settling
{
    private const double HalfLives = 3;

    // Where volume or loss are unknown the half-life is too; no demo or reference system is slower than 83 h.
    private const double FadingDaysWhenUnknown = 83 / 24.0 / 0.693;

    private static readonly HashSet<EventType> Disturbances = [EventType.Drained, EventType.Refilled, EventType.Cleaned, EventType.Started];

    /// <summary>Days in which the present water fades to 1/e: volume over liquid loss.</summary>
    public static double FadingDays(VisitFacts visit)
    {
        var recent = visit;
        for (var i = 0; i < 6 && recent is not null; i++, recent = recent.Previous)
        {
            if (visit.History.System.VolumeL is { } volume
                && recent.Programme?.TargetCycles is { } target
                && recent.Water is { Since: { } since, MakeUp: { HasValue: true, Value.Value: > 0 } makeUp })
            {
                var days = (recent.Visit.At - since.Visit.At).TotalDays;
                return Math.Clamp(volume * days * target / makeUp.Value.Value, 0.1, 30);
            }
        }

        return FadingDaysWhenUnknown;
    }

    /// <summary>Why the visit cannot be judged on the state of its water, or null.</summary>
    public static Reason? Of(VisitFacts visit)
    {
        if (visit.Record.Running == false || visit.Record.InUse == false)
        {
            return VisitReasons.Idle;
        }

        var since = visit.Visit.At - TimeSpan.FromDays(HalfLives * 0.693 * visit.FadingDays);
        if (visit.Programme is { } now && ChangedSetPoint(visit, now, since))
        {
            return VisitReasons.Unsettled;
        }

        for (var earlier = visit; earlier is not null && earlier.Visit.At >= since.AddDays(-30); earlier = earlier.Previous)
        {
            if (HasDisturbance(earlier, since, visit.Visit.At) || (IsWithin(earlier.Visit.At, since, visit.Visit.At) && IsDisturbance(earlier, isNow: earlier == visit)))
            {
                return VisitReasons.Unsettled;
            }
        }

        return null;
    }

    private static bool IsWithin(DateTime moment, DateTime since, DateTime until) => moment >= since && moment <= until;

    private static bool HasDisturbance(VisitFacts visit, DateTime since, DateTime until)
    {
        var events = visit.Record.Events;
        for (var i = 0; i < events.Count; i++)
        {
            if (Disturbances.Contains(events[i].Type) && IsWithin((events[i].At ?? visit.Visit.Visit.Arrived).Utc, since, until))
            {
                return true;
            }
        }

        return false;
    }

    // What a visit changes tells of the water after it, not of what it found.
    private static bool IsDisturbance(VisitFacts visit, bool isNow) => visit.Visit.Visit.Kind is VisitKind.StartUp or VisitKind.Commissioning
        || (!isNow && (visit.Record.Running == false || visit.Record.InUse == false || visit.Record.Settings.Any(IsChangedSetPoint)));

    /// <summary>Whether a dose governs the bleed at a moment: bleeding down before it, feeding, or holding the bleed shut after it.</summary>
    public static bool DoseGovernsBleed(VisitFacts visit)
    {
        foreach (var feed in visit.Programme?.Feeds.Where(feed => feed.Mode == FeedMode.DosePlan) ?? [])
        {
            var before = TimeSpan.FromMinutes(feed.BleedDownFirst?.Minutes ?? 0);
            var after = TimeSpan.FromMinutes((feed.RunMinutes ?? 0) + (feed.HoldBleedShutMin ?? 0));
            if (visit.History.Doses.Starts(visit.Programme!, feed, visit.Visit.At - after, visit.Visit.At + before + TimeSpan.FromMinutes(1)).Length > 0)
            {
                return true;
            }
        }

        return false;
    }

    private static bool ChangedSetPoint(VisitFacts visit, Programme now, DateTime since) =>
        now.From > visit.History.DayOf(since)
        && visit.History.ProgrammeOn(now.From.AddDays(-1)) is { } before
        && before.SetPointUsPerCm != now.SetPointUsPerCm;

    private static bool IsChangedSetPoint(SettingReading setting) =>
        setting.Name == "setPointUsPerCm" && setting.Left?.Number is { } left && setting.Found?.Number is { } found && left != found;
}
