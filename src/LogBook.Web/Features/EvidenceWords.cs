using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features;

/// <summary>Figures of a finding as people read them.</summary>
public static class EvidenceWords
{
    private static readonly Text Glance = new("{0}: {1} ({2}); limit {3}", "{0}: {1} ({2}); límite {3}", "{0}: {1} ({2}); limite {3}");
    private static readonly Text OnlyLimit = new("limit {0}", "límite {0}", "limite {0}");

    /// <summary>Value with its unit; a dash where there is none.</summary>
    public static string Value(Evidence evidence, Language language) => evidence.Value is { } value ? Number(value, evidence.Unit, language) : "–";

    /// <summary>The 95 % interval.</summary>
    public static string Interval(Evidence evidence, Language language) => Range(evidence.Low, evidence.High, evidence.Unit, language);

    /// <summary>The limit used.</summary>
    public static string Limit(Evidence evidence, Language language) => Range(evidence.LimitLow, evidence.LimitHigh, evidence.Unit, language);

    /// <summary>Value, interval and limit in one line, as far as they are there.</summary>
    public static string AtAGlance(Evidence evidence, Language language)
    {
        var hasInterval = evidence.Low is not null || evidence.High is not null;
        var hasLimit = evidence.LimitLow is not null || evidence.LimitHigh is not null;
        return hasInterval && hasLimit
            ? Glance.In(language, evidence.What, Value(evidence, language), Interval(evidence, language), Limit(evidence, language))
            : $"{evidence.What}: {Value(evidence, language)}" + (hasInterval ? $" ({Interval(evidence, language)})" : "") + (hasLimit ? $"; {OnlyLimit.In(language, Limit(evidence, language))}" : "");
    }

    private static string Range(double? low, double? high, string unit, Language language) =>
        Shown.Range(low, high, unit, language) is { Length: > 0 } range ? range : "–";

    private static string Number(double value, string unit, Language language) => Shown.PlainWithUnit(value, unit, language);
}
