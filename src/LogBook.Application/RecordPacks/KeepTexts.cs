using LogBook.Domain.Clocks;
using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>How long records are kept, in words.</summary>
public static class KeepTexts
{
    private static readonly Text ByRule = new(
        "{0} ({1} years from the last entry: {2}, {3})",
        "{0} ({1} años desde la última entrada: {2}, {3})",
        "{0} ({1} anos desde a última entrada: {2}, {3})");

    private static readonly Text ByDefault = new("{0} (five years from the last entry)", "{0} (cinco años desde la última entrada)", "{0} (cinco anos desde a última entrada)");

    /// <summary>Until when, and by what, for a list that says the rest once.</summary>
    /// <param name="keeping">The period.</param>
    /// <param name="language">Language.</param>
    public static string ReasonOf(RetentionPeriod keeping, Language language) =>
        keeping is { Until: { } until, Rule: null } ? ByDefault.In(language, Shown.Day(until, language)) : WordsOf(keeping, language);

    /// <summary>Until when, and by what.</summary>
    /// <param name="keeping">The period.</param>
    /// <param name="language">Language.</param>
    public static string WordsOf(RetentionPeriod keeping, Language language) => keeping switch
    {
        { Until: null } => RecordTexts.HoldKeeps.In(language),
        { Rule: { } rule } => ByRule.In(language, Shown.Day(keeping.Until!.Value, language), Shown.Plain(keeping.Years, language), rule.Code, rule.Name),
        _ => RecordTexts.KeepMore.In(language, Shown.Day(keeping.Until!.Value, language)),
    };
}
