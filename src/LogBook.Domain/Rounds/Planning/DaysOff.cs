using System.Globalization;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>Days on which a person is away, on which the firm or a site is closed, or on which a person's sites go to a colleague.</summary>
/// <param name="Kind">Who or what is off.</param>
/// <param name="Of">Code of the person or site; null for the firm.</param>
/// <param name="From">First day.</param>
/// <param name="To">Last day, not before the first.</param>
public sealed record DaysOff(DaysOffKind Kind, string? Of, DateOnly From, DateOnly To)
{
    /// <summary>Longest span that is taken for meant, days.</summary>
    public const int MostDays = 366;

    /// <summary>Longest span of days that come back every week, days: they hold until somebody ends them.</summary>
    public const int MostDaysWeekly = 3660;

    /// <summary>Who goes instead of a person; null where nobody is named.</summary>
    public string? StandIn { get; init; }

    /// <summary>Sites that go to a colleague; empty for all of the person. Used by <see cref="DaysOffKind.Lent"/> only.</summary>
    public IReadOnlyList<string> Sites { get; init => field = value ?? []; } = [];

    /// <summary>Weekdays of the span that are meant, as the weekends of a plant; empty for every day. Used by closed days only.</summary>
    public IReadOnlyList<Weekday> Weekdays { get; init => field = value ?? []; } = [];

    /// <summary>Longest span that is taken for meant, days.</summary>
    public int Longest => Weekdays.Count > 0 ? MostDaysWeekly : MostDays;

    /// <summary>Why; null where nobody said it.</summary>
    public OffReason? Reason { get; init; }

    /// <summary>A word on it, without anything about somebody's health; null for none.</summary>
    public string? Note { get; init; }

    /// <summary>Names it among all of them: one span of a person or a place begins on a day, and one of weekdays; of lent sites, one for each colleague.</summary>
    public string Key => string.Create(CultureInfo.InvariantCulture, $"{Kind.ToString().ToLowerInvariant()}/{Of}/{(Kind == DaysOffKind.Lent ? StandIn + "/" : "")}{From:yyyy-MM-dd}{(Weekdays.Count > 0 ? "/weekly" : "")}");

    /// <summary>Reasons that a kind can have.</summary>
    /// <param name="kind">The kind.</param>
    /// <returns>In the order in which they are offered; none for lent sites.</returns>
    public static IReadOnlyList<OffReason> ReasonsOf(DaysOffKind kind) => kind switch
    {
        DaysOffKind.Person => [OffReason.Leave, OffReason.Course, OffReason.OtherWork],
        DaysOffKind.Firm => [OffReason.PublicHoliday, OffReason.FirmShut],
        DaysOffKind.Site => [OffReason.PlantShut, OffReason.NoAccess],
        _ => [],
    };

    /// <summary>Whether a day is among them.</summary>
    /// <param name="day">The day.</param>
    public bool Holds(DateOnly day) => day >= From && day <= To && (Weekdays.Count == 0 || Weekdays.Contains((Weekday)(((int)day.DayOfWeek + 6) % 7)));
}
