using LogBook.Domain.Clocks;
using LogBook.Domain.Programmes;

namespace LogBook.Application.Clocks;

/// <summary>A page of the list of all clocks.</summary>
/// <param name="Now">Moment it was made for, UTC.</param>
/// <param name="Rows">Most urgent first.</param>
/// <param name="Total">How many match the filter.</param>
/// <param name="Counts">How many stand where, with the other filters but not that of the standing.</param>
/// <param name="Sites">Sites to choose from.</param>
/// <param name="People">Technicians to choose from.</param>
/// <param name="Rules">Rules to choose from: code and name.</param>
public sealed record ClocksList(
    DateTime Now,
    IReadOnlyList<ClockLine> Rows,
    int Total,
    IReadOnlyDictionary<ClockStanding, int> Counts,
    IReadOnlyList<(string Code, string Name)> Sites,
    IReadOnlyList<string> People,
    IReadOnlyList<(string Code, string Name)> Rules)
{
    /// <summary>Every version of the rules that clocks of the list run under.</summary>
    public IReadOnlyList<Rule> Versions { get; init; } = [];

    /// <summary>Zones of the sites.</summary>
    public IReadOnlyDictionary<string, TimeZoneInfo> Zones { get; init; } = new Dictionary<string, TimeZoneInfo>();

    /// <summary>The version of the rule that a clock runs under; null where it is not on file.</summary>
    public Rule? RuleOf(RunningClock clock) => Versions.FirstOrDefault(rule => string.Equals(rule.Code, clock.Rule, StringComparison.OrdinalIgnoreCase) && rule.From == clock.RuleFrom);
}
