using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>One running clock: something that a rule in force wants done within some days.</summary>
public sealed record Duty
{
    // A plant that does not run for so long has no last day worth a name; longer than any interval of a rule.
    private const int FarthestDays = 3650;

    private readonly Operation? _operation;

    internal Duty(DutyKind kind, Rule rule, DateOnly since, double days, Operation? operation = null)
    {
        Kind = kind;
        Rule = rule;
        Since = since;
        Days = days;
        _operation = operation;
    }

    /// <summary>What set it running.</summary>
    public DutyKind Kind { get; }

    /// <summary>The rule, in its version in force.</summary>
    public Rule Rule { get; }

    /// <summary>Day from which it counts, in the site's zone.</summary>
    public DateOnly Since { get; }

    /// <summary>Days allowed, grace included.</summary>
    public double Days { get; }

    /// <summary>Interval asked for, days without grace: the rule's own, or the shorter one of <see cref="Band"/>; null for the other kinds.</summary>
    public double? EveryDays => Kind == DutyKind.Interval ? Band?.EveryDays ?? Rule.EveryDays : null;

    /// <summary>Band of the last result that shortens the interval; null where none does.</summary>
    public RuleBand? Band { get; init; }

    /// <summary>Event that set it running; null for the other kinds.</summary>
    public EventType? Event { get; init; }

    /// <summary>First day on which a retest counts; null for the other kinds.</summary>
    public DateOnly? NotBefore { get; init; }

    /// <summary>Day of a sample that came too early to be the retest; null where there was none.</summary>
    public DateOnly? TooEarlyOn { get; init; }

    /// <summary>Whether nothing is left to do (an event's or a result's duty that was met).</summary>
    public bool IsMet { get; init; }

    /// <summary>When it was last done, UTC; null where the records tell of none.</summary>
    public DateTime? LastDone { get; init; }

    /// <summary>Whether the sample of <see cref="LastDone"/> still waits for its result.</summary>
    public bool IsPending { get; init; }

    /// <summary>Visit that holds the result which set it running; null for the other kinds.</summary>
    public Guid? Visit { get; init; }

    /// <summary>Receipt of the result, UTC, for <see cref="DutyKind.Notify"/>; null for the other kinds.</summary>
    public DateTime? ReceivedAt { get; init; }

    /// <summary>Moment up to which the authority must be told, UTC, for <see cref="DutyKind.Notify"/>; null for the other kinds.</summary>
    public DateTime? NotifyBy { get; init; }

    /// <summary>Day on which the authority was told, in the site's zone; null where no notification is on record.</summary>
    public DateOnly? NotifiedOn { get; init; }

    /// <summary>Whether only days of operation count.</summary>
    public bool CountsOperatingDays => _operation is not null;

    /// <summary>Days passed since <see cref="Since"/>: days of operation where the rule says so, else calendar days.</summary>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>Whole days, never below 0.</returns>
    public int PassedOn(DateOnly day) => _operation is null
        ? Math.Max(0, day.DayNumber - Since.DayNumber)
        : OperatingDays.Between(_operation, Since, day);

    /// <summary>Last day that is still in time, in the site's zone; days of a stop are passed over where the rule does so.</summary>
    public DateOnly LastDay
    {
        get
        {
            if (_operation is null)
            {
                return NotifyUntil ?? Since.AddDays((int)Days);
            }

            var day = Since;
            for (var left = (int)Days; left > 0 && day < Since.AddDays(FarthestDays);)
            {
                day = day.AddDays(1);
                left -= OperatingDays.Runs(_operation, day) ? 1 : 0;
            }

            return day;
        }
    }

    /// <summary>Day of <see cref="NotifyBy"/> in the site's zone.</summary>
    internal DateOnly? NotifyUntil { get; init; }

    /// <summary>Whether the days allowed are over.</summary>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>True from the day after the last allowed one, unless it was met.</returns>
    public bool IsOverdueOn(DateOnly day) => Kind == DutyKind.Notify
        ? day > LastDay && !(NotifiedOn <= day)
        : !IsMet && PassedOn(day) > Days;

    /// <summary>First day on which less than a share of the time allowed is left, in the site's zone.</summary>
    /// <param name="share">0 to 1.</param>
    /// <returns>The day; not after the day that follows <see cref="LastDay"/>.</returns>
    public DateOnly SoonFrom(double share)
    {
        var last = LastDay;
        var day = Since;
        for (var passed = 0; day <= last && passed <= Days * (1 - share);)
        {
            day = day.AddDays(1);
            passed += OperatingDays.Runs(_operation, day) ? 1 : 0;
        }

        return day;
    }
}
