using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Rules of authorities and contracts that hold for a system on a day.</summary>
internal static class RulesInForce
{
    /// <summary>The version in force of every rule that applies to the system.</summary>
    public static IEnumerable<Rule> Of(SystemHistory history, DateOnly day) => history.System.Rules
        .Select(code => history.Firm.Rules
            .Where(rule => rule.Code.Equals(code, StringComparison.OrdinalIgnoreCase) && rule.From <= day && (rule.To is not { } to || day <= to))
            .MaxBy(rule => rule.From))
        .Where(rule => rule is not null)
        .Select(rule => rule!);

    /// <summary>The rule with bands for a test, or null.</summary>
    public static Rule? ForTest(SystemHistory history, string test, DateOnly day) =>
        Of(history, day).FirstOrDefault(rule => test.Equals(rule.Test, StringComparison.OrdinalIgnoreCase) && rule.Bands.Count > 0);
}
