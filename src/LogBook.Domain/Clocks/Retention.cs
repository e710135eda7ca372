using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Clocks;

/// <summary>How long records are kept. LogBook deletes none by itself; this is the day before which nobody should.</summary>
/// <remarks>
/// Five years from the last entry by default, the longest period named in the sources seen (42. BImSchV
/// section 12; HSE L8 third edition for checks; NSW Public Health Regulation 2022). A rule or a contract may ask for more; one that asks
/// for less does not shorten it, because nobody knows what else the records must prove.
/// </remarks>
public static class Retention
{
    /// <summary>Years from the last entry where no rule asks for more.</summary>
    public const int Years = 5;

    private const int MonthsOfYear = 12;

    // A calendar ends in the year 9999.
    private const double MostYears = 1000;

    /// <summary>How long the records of a site are kept, and by what.</summary>
    /// <param name="systems">Systems of the site, those out of use too.</param>
    /// <param name="rules">Every version of all rules of the firm.</param>
    /// <param name="firstEntry">Day of the first entry.</param>
    /// <param name="lastEntry">Day of the last entry.</param>
    /// <param name="isHeld">Whether a legal hold lies on them: it wins over every period.</param>
    /// <returns>The longest period of any version of a rule of its systems that was in force on or after the first entry, and never less than <see cref="Years"/>.</returns>
    public static RetentionPeriod Of(IEnumerable<WaterSystem> systems, IEnumerable<Rule> rules, DateOnly firstEntry, DateOnly lastEntry, bool isHeld)
    {
        var codes = systems.SelectMany(system => system.Rules).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var longest = rules.Where(rule => codes.Contains(rule.Code) && rule.KeepYears is > 0 && (rule.To is not { } to || to >= firstEntry))
            .OrderByDescending(rule => rule.KeepYears).ThenBy(rule => rule.Code, StringComparer.OrdinalIgnoreCase).ThenByDescending(rule => rule.From).FirstOrDefault();
        var rule = longest?.KeepYears > Years ? longest : null;
        var years = rule?.KeepYears ?? Years;
        return new RetentionPeriod(years, rule, isHeld ? null : lastEntry.AddMonths((int)Math.Ceiling(Math.Min(years, MostYears) * MonthsOfYear)), isHeld);
    }
}
