using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>
/// Rules that apply to a system, by the days on which one begins or ends: asked for every day, they change once in years. May be used by
/// several threads at once.
/// </summary>
internal sealed class RuleCalendar
{
    private readonly DateOnly[] _changes;
    private readonly Rule[][] _from;

    /// <summary>Makes it.</summary>
    /// <param name="codes">Codes of the rules that apply, in their order.</param>
    /// <param name="rules">Every dated version of all rules.</param>
    public RuleCalendar(IReadOnlyList<string> codes, IReadOnlyList<Rule> rules)
    {
        var own = rules.Where(rule => codes.Contains(rule.Code, StringComparer.OrdinalIgnoreCase)).ToList();
        _changes = [.. own.Select(rule => rule.From).Concat(own.Where(rule => rule.To < DateOnly.MaxValue).Select(rule => rule.To!.Value.AddDays(1))).Append(DateOnly.MinValue).Distinct().Order()];
        _from = Array.ConvertAll(_changes, day => InForce(codes, own, day).ToArray());
    }

    /// <summary>The version in force of every rule on a day.</summary>
    /// <param name="day">Day in the site's zone.</param>
    public Rule[] On(DateOnly day) => _from[PlaceOf(day)];

    /// <summary>The version in force of every rule at a moment.</summary>
    /// <param name="history">For the site's zone.</param>
    /// <param name="utc">UTC.</param>
    public Rule[] At(SystemHistory history, DateTime utc)
    {
        // Wherever on earth, the day is that of UTC or one beside it: its own zone matters only where a rule begins or ends just then.
        var day = DateOnly.FromDateTime(utc);
        var (first, last) = (PlaceOf(day == DateOnly.MinValue ? day : day.AddDays(-1)), PlaceOf(day == DateOnly.MaxValue ? day : day.AddDays(1)));
        return first == last ? _from[first] : On(history.DayOf(utc));
    }

    private int PlaceOf(DateOnly day)
    {
        var last = _changes.Length - 1;
        while (_changes[last] > day)
        {
            last--;
        }

        return last;
    }

    private static IEnumerable<Rule> InForce(IReadOnlyList<string> codes, List<Rule> rules, DateOnly day) => codes
        .Select(code => rules
            .Where(rule => rule.Code.Equals(code, StringComparison.OrdinalIgnoreCase) && rule.From <= day && (rule.To is not { } to || day <= to))
            .MaxBy(rule => rule.From))
        .Where(rule => rule is not null)
        .Select(rule => rule!);
}
