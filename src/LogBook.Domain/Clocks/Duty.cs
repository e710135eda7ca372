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

    /// <summary>Event that set it running; null for the other kinds.</summary>
    public EventType? Event { get; init; }

    /// <summary>First day on which a retest counts; null for the other kinds.</summary>
    public DateOnly? NotBefore { get; init; }

    /// <summary>Day of a sample that came too early to be the retest; null where there was none.</summary>
    public DateOnly? TooEarlyOn { get; init; }

    /// <summary>Whether nothing is left to do (an event's or a result's duty that was met).</summary>
    public bool IsMet { get; init; }

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
                return Since.AddDays((int)Days);
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

    /// <summary>Whether the days allowed are over.</summary>
    /// <param name="day">Day in the site's zone.</param>
    /// <returns>True from the day after the last allowed one, unless it was met.</returns>
    public bool IsOverdueOn(DateOnly day) => !IsMet && PassedOn(day) > Days;
}
