using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Rules of authorities and contracts that hold for a system on a day.</summary>
internal static class RulesInForce
{
    /// <summary>The version in force of every rule that applies to the system: the same list for days between which no rule begins or ends.</summary>
    public static IReadOnlyList<Rule> Of(SystemHistory history, DateOnly day) => history.RuleCalendar.On(day);

    /// <summary>The rule with bands for a test, or null.</summary>
    public static Rule? ForTest(SystemHistory history, string test, DateOnly day) =>
        Of(history, day).FirstOrDefault(rule => test.Equals(rule.Test, StringComparison.OrdinalIgnoreCase) && rule.Bands.Count > 0);
}
