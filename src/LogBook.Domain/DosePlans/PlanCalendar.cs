using LogBook.Domain.Programmes;

namespace LogBook.Domain.DosePlans;

/// <summary>Weeks of a dose plan, by local days.</summary>
/// <remarks>Not ISO week mod 4: years of 53 weeks shift that. Reference: 12-biocide-schedule.md, 12-biocide-schedule.csv, rotation_week.</remarks>
public static class PlanCalendar
{
    /// <summary>Usual length of a plan.</summary>
    public const int UsualWeeks = 4;

    /// <summary>Week of the plan, floor((day − anchor)/7) mod weeks + 1.</summary>
    /// <param name="anchor">A day on which week 1 begins, a Monday.</param>
    /// <param name="day">Local day, before or after the anchor.</param>
    /// <param name="planWeeks">Weeks of the plan, 1 or more.</param>
    /// <returns>1 to <paramref name="planWeeks"/>.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A plan without weeks.</exception>
    public static int Week(DateOnly anchor, DateOnly day, int planWeeks = UsualWeeks)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(planWeeks, 1);
        var passed = (int)Math.Floor((day.DayNumber - anchor.DayNumber) / 7.0);
        return (((passed % planWeeks) + planWeeks) % planWeeks) + 1;
    }

    /// <summary>Week of a programme's plan on a day.</summary>
    /// <param name="programme">Its weeks count from <see cref="Programme.WeekOneFrom"/>, else from the Monday on or before its first day.</param>
    /// <param name="day">Local day.</param>
    /// <returns>1 to the weeks of the plan.</returns>
    public static int Week(Programme programme, DateOnly day) => Week(Anchor(programme), day, programme.PlanWeeks ?? UsualWeeks);

    /// <summary>Day on which week 1 of a programme begins.</summary>
    /// <param name="programme">The programme.</param>
    /// <returns>Its own day when it names one, else the Monday on or before its first day.</returns>
    public static DateOnly Anchor(Programme programme) =>
        programme.WeekOneFrom ?? programme.From.AddDays(-(((int)programme.From.DayOfWeek + 6) % 7));
}
