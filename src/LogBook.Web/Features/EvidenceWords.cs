using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Web.Features;

/// <summary>Figures of a finding as people read them.</summary>
public static class EvidenceWords
{
    private static readonly Text Between = new("{0} to {1}", "{0} a {1}", "{0} a {1}");
    private static readonly Text AtLeast = new("at least {0}", "al menos {0}", "no mínimo {0}");
    private static readonly Text AtMost = new("at most {0}", "como máximo {0}", "no máximo {0}");
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

    private static string Range(double? low, double? high, string unit, Language language) => (low, high) switch
    {
        ({ } from, { } to) => Between.In(language, Shown.Computed(from, language), Number(to, unit, language)),
        ({ } from, null) => AtLeast.In(language, Number(from, unit, language)),
        (null, { } to) => AtMost.In(language, Number(to, unit, language)),
        _ => "–",
    };

    private static string Number(double value, string unit, Language language)
    {
        var shown = Shown.Unit(unit, language);
        return shown.Length == 0 || unit == "[pH]" ? Shown.Computed(value, language) : $"{Shown.Computed(value, language)} {shown}";
    }
}
