using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Rules of authorities and contracts that hold for a system on a day.</summary>
internal static class RulesInForce
{
    /// <summary>The version in force of every rule that applies to the system: the same list for days between which no rule begins or ends.</summary>
    public static IReadOnlyList<Rule> Of(SystemHistory history, DateOnly day) => history.RuleCalendar.On(day);

    /// <summary>Those at a moment.</summary>
    public static Rule[] At(SystemHistory history, DateTime utc) => history.RuleCalendar.At(history, utc);

    /// <summary>The rule with bands for a test, or null.</summary>
    public static Rule? ForTest(SystemHistory history, string test, DateOnly day) => ForTest(history.RuleCalendar.On(day), test);

    /// <summary>The rule with bands for a test at a moment, or null.</summary>
    public static Rule? ForTest(SystemHistory history, string test, DateTime utc) => ForTest(At(history, utc), test);

    private static Rule? ForTest(Rule[] rules, string test)
    {
        foreach (var rule in rules)
        {
            if (rule.Bands.Count > 0 && test.Equals(rule.Test, StringComparison.OrdinalIgnoreCase))
            {
                return rule;
            }
        }

        return null;
    }
}
