using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>The agreed interval of visits as a record: each time between two visits, and whether the next one was late.</summary>
public static class VisitPromises
{
    /// <summary>Code under which the agreed interval stands among the rules.</summary>
    public const string Code = "visit-every";

    /// <summary>The spells that touch a period.</summary>
    /// <param name="visitDays">Days of visits in the site's zone, in any order; deliveries and results are no visits.</param>
    /// <param name="everyDays">Agreed interval, days; none gives no spells.</param>
    /// <param name="operations">When each system of the site runs; empty means always.</param>
    /// <param name="from">First day of the period.</param>
    /// <param name="to">Last day of the period, or today where that is earlier.</param>
    /// <returns>Spells by their first day; late in the sense of <see cref="VisitDue.IsLate"/> is missed.</returns>
    public static IReadOnlyList<RuleSpell> Of(IEnumerable<DateOnly> visitDays, double? everyDays, IReadOnlyList<Operation?> operations, DateOnly from, DateOnly to)
    {
        if (everyDays is not > 0)
        {
            return [];
        }

        var days = visitDays.Distinct().Order().ToList();
        var spells = new List<RuleSpell>();
        for (var place = 0; place < days.Count; place++)
        {
            var since = days[place];
            DateOnly? next = place + 1 < days.Count ? days[place + 1] : null;
            if (since > to || (next ?? to) < from || VisitDue.On(since, everyDays, operations) is not { } due)
            {
                continue;
            }

            var end = next is { } done && done <= to ? done : to;
            var isLate = IsLate(since, everyDays, operations, due, end);
            spells.Add(new RuleSpell
            {
                Kind = DutyKind.Interval,
                Rule = new Rule { Code = Code, Name = Code, From = since, EveryDays = everyDays },
                Since = since,
                DueBy = due,
                DoneOn = next,
                Standing = isLate ? RuleStanding.Missed : next <= to ? RuleStanding.Met : RuleStanding.Running,
                DaysOver = isLate ? Math.Max(1, (next ?? end).DayNumber - due.DayNumber) : 0,
            });
        }

        return spells;
    }

    private static bool IsLate(DateOnly since, double? everyDays, IReadOnlyList<Operation?> operations, DateOnly due, DateOnly end)
    {
        for (var day = end; day > due; day = day.AddDays(-1))
        {
            if (VisitDue.IsLate(since, everyDays, operations, day))
            {
                return true;
            }
        }

        return false;
    }
}
