using LogBook.Domain.Programmes;

namespace LogBook.Domain.Clocks;

/// <summary>A template taken over into a rule of the firm.</summary>
/// <param name="Rule">The rule in the version that begins on the day.</param>
/// <param name="Ended">The version before it with its last day; null where there is none.</param>
public sealed record RuleAdoption(Rule Rule, Rule? Ended)
{
    /// <summary>Whether a rule taken over on a day would begin within the template's own dates.</summary>
    /// <param name="template">The template.</param>
    /// <param name="from">First day in force.</param>
    public static bool IsWithin(RuleTemplate template, DateOnly from) => from >= template.Rule.From && (template.Rule.To is not { } to || from <= to);

    /// <summary>Takes a template over from a day on.</summary>
    /// <param name="template">The template.</param>
    /// <param name="from">First day in force.</param>
    /// <param name="checkedWith">Who checked it with the authority, and when: kept with the source.</param>
    /// <param name="known">Every version of all rules of the firm.</param>
    /// <returns>Null for a day outside the template's own dates, and where a version of the rule begins on that day or after it: a record is judged by the rule of its date, which must not change backwards.</returns>
    public static RuleAdoption? Of(RuleTemplate template, DateOnly from, string checkedWith, IEnumerable<Rule> known)
    {
        var last = known.Where(rule => rule.Code.Equals(template.Rule.Code, StringComparison.OrdinalIgnoreCase)).MaxBy(rule => rule.From);
        if (!IsWithin(template, from) || (last is not null && last.From >= from))
        {
            return null;
        }

        var rule = template.Rule with { Code = last?.Code ?? template.Rule.Code, From = from, KeepYears = template.KeepYears, Source = $"{template.Rule.Source}. {checkedWith}" };
        return new RuleAdoption(rule, last is not null && (last.To is null || last.To >= from) ? last with { To = from.AddDays(-1) } : null);
    }
}
