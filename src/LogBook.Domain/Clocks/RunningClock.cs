using LogBook.Domain.History;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>A clock with its moments: what a list of all clocks shows. Plain data, so that it can be kept beside the assessment.</summary>
/// <param name="Kind">What sets it running.</param>
/// <param name="Since">From when it counts, UTC.</param>
/// <param name="Soon">From when little time is left, UTC.</param>
/// <param name="Due">End of the time allowed, UTC: for clocks of days the end of the last day in the site's zone.</param>
/// <param name="Days">Days allowed; a part of a day for hours.</param>
public sealed record RunningClock(DutyKind Kind, DateTime Since, DateTime Soon, DateTime Due, double Days)
{
    /// <summary>Hours before the end of a countdown from which it is called soon; the same as for the finding.</summary>
    public const double HoursSoon = 6;

    /// <summary>Share of the interval that is left when a visit or a summary is called due soon.</summary>
    public const double ShareSoon = 0.2;

    // Longer than any agreed interval and its grace.
    private const int FarthestDays = 800;

    /// <summary>Code of the rule; null for what the contract says.</summary>
    public string? Rule { get; init; }

    /// <summary>First day in force of the version of the rule that it is judged by.</summary>
    public DateOnly? RuleFrom { get; init; }

    /// <summary>Event that set it running.</summary>
    public EventType? Event { get; init; }

    /// <summary>First day on which a retest counts.</summary>
    public DateOnly? NotBefore { get; init; }

    /// <summary>Day of a sample that came too early to be the retest.</summary>
    public DateOnly? TooEarlyOn { get; init; }

    /// <summary>When it was last done, UTC; null where the records tell of none.</summary>
    public DateTime? LastDone { get; init; }

    /// <summary>Whether the last sample still waits for its result.</summary>
    public bool IsPending { get; init; }

    /// <summary>Whether nothing is left to do.</summary>
    public bool IsMet { get; init; }

    /// <summary>Whether only days of operation count.</summary>
    public bool CountsOperatingDays { get; init; }

    /// <summary>Visit that it is about: of the result, or the one whose summary is promised.</summary>
    public Guid? Visit { get; init; }

    /// <summary>Moment from which a visit is called late, UTC: after the grace of the exchange format; null for the other kinds.</summary>
    public DateTime? LateFrom { get; init; }

    /// <summary>A duty under a rule, with its moments.</summary>
    /// <param name="history">The system's history, for the zone.</param>
    /// <param name="duty">The duty.</param>
    /// <param name="shareSoon">Share of the time that is left when it is called due soon, 0 to 1.</param>
    public static RunningClock Of(SystemHistory history, Duty duty, double shareSoon)
    {
        var isCountdown = duty.Kind == DutyKind.Notify;
        var due = isCountdown ? duty.NotifyBy!.Value : StartOf(history.Zone, duty.LastDay.AddDays(1));
        return new RunningClock(
            duty.Kind,
            duty.ReceivedAt ?? StartOf(history.Zone, duty.Since),
            isCountdown ? due.AddHours(-HoursSoon) : StartOf(history.Zone, duty.SoonFrom(shareSoon)),
            due,
            duty.Days)
        {
            Rule = duty.Rule.Code,
            RuleFrom = duty.Rule.From,
            Event = duty.Event,
            NotBefore = duty.NotBefore,
            TooEarlyOn = duty.TooEarlyOn,
            LastDone = duty.LastDone,
            IsPending = duty.IsPending,
            IsMet = duty.IsMet,
            CountsOperatingDays = duty.CountsOperatingDays,
            Visit = duty.Visit,
        };
    }

    /// <summary>The clock of the next visit.</summary>
    /// <param name="zone">The site's zone.</param>
    /// <param name="last">Day of the last visit.</param>
    /// <param name="due">Day on which the next one is due.</param>
    /// <param name="everyDays">Agreed interval in days.</param>
    /// <param name="operations">When each system of the site runs; empty means always.</param>
    public static RunningClock OfVisit(TimeZoneInfo zone, DateOnly last, DateOnly due, double everyDays, IReadOnlyList<Operation?> operations)
    {
        var late = due.AddDays(1);
        while (late < due.AddDays(FarthestDays) && !VisitDue.IsLate(last, everyDays, operations, late))
        {
            late = late.AddDays(1);
        }

        var soon = due.AddDays(-(int)Math.Floor(ShareSoon * (due.DayNumber - last.DayNumber)));
        return new RunningClock(DutyKind.Visit, StartOf(zone, last), StartOf(zone, soon), StartOf(zone, due.AddDays(1)), everyDays)
        {
            LastDone = StartOf(zone, last),
            LateFrom = StartOf(zone, late),
            CountsOperatingDays = operations.Any(operation => operation is not null),
        };
    }

    /// <summary>The promise to send the summary of a visit.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="left">When the visit ended, UTC.</param>
    /// <param name="withinHours">Hours promised.</param>
    /// <param name="accepted">When the mail server took it, UTC; null where it has not.</param>
    public static RunningClock OfSummary(Guid visit, DateTime left, double withinHours, DateTime? accepted) =>
        new(DutyKind.Summary, left, left.AddHours(withinHours * (1 - ShareSoon)), left.AddHours(withinHours), withinHours / 24)
        {
            Visit = visit,
            LastDone = accepted,
            IsMet = accepted is not null,
        };

    /// <summary>The promise to send the summary of a visit by a moment.</summary>
    /// <param name="visit">The visit.</param>
    /// <param name="left">When the visit ended, UTC.</param>
    /// <param name="due">By when it is promised, UTC, after <paramref name="left"/>.</param>
    /// <param name="accepted">When the mail server took it, UTC; null where it has not.</param>
    public static RunningClock OfSummary(Guid visit, DateTime left, DateTime due, DateTime? accepted) =>
        OfSummary(visit, left, (due - left).TotalHours, accepted) with { Due = due };

    /// <summary>Where it stands.</summary>
    /// <param name="utc">Moment, UTC.</param>
    public ClockStanding StandingAt(DateTime utc) =>
        IsMet ? ClockStanding.Met
        : utc >= (LateFrom ?? Due) ? ClockStanding.Missed
        : utc >= Soon ? ClockStanding.DueSoon
        : LastDone is null && Kind == DutyKind.Interval ? ClockStanding.Unknown
        : ClockStanding.Running;

    /// <summary>Whether it was met, but after its time.</summary>
    public bool WasLate => IsMet && LastDone > Due;

    /// <summary>Start of a day in a zone, UTC; where a clock change skips midnight, the day begins an hour later.</summary>
    /// <param name="zone">The zone.</param>
    /// <param name="day">The day.</param>
    internal static DateTime StartOf(TimeZoneInfo zone, DateOnly day)
    {
        var midnight = day.ToDateTime(TimeOnly.MinValue);
        return TimeZoneInfo.ConvertTimeToUtc(zone.IsInvalidTime(midnight) ? midnight.AddHours(1) : midnight, zone);
    }
}
