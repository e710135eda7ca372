using System.Globalization;
using System.Reflection;
using System.Security.Cryptography;
using System.Text;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Assessments;

/// <summary>Thresholds and default uncertainties of one installation: the defaults, or what it has put in their place.</summary>
public sealed class EngineSettings
{
    private static readonly Text NotANumber = new(
        "{0} is '{1}', expected a number of 0 or more, with a point", "{0} es '{1}'; se espera un número de 0 o más, con punto", "{0} é '{1}'; espera-se um número de 0 ou mais, com ponto");

    private static readonly Text Unknown = new(
        "{0} is not a threshold or default uncertainty", "{0} no es un umbral ni una incertidumbre por defecto", "{0} não é um limiar nem uma incerteza padrão");

    private static readonly Text OfInstallation = new("set by this installation", "fijado por esta instalación", "definido por esta instalação");

    private EngineSettings(UncertaintyTable uncertainties, FindingThresholds thresholds, string version)
    {
        Uncertainties = uncertainties;
        Thresholds = thresholds;
        Version = version;
    }

    /// <summary>The defaults.</summary>
    public static EngineSettings Default { get; } = new(UncertaintyTable.Default, FindingThresholds.Default, Assessment.EngineVersion);

    /// <summary>Default uncertainties in force.</summary>
    public UncertaintyTable Uncertainties { get; }

    /// <summary>Thresholds in force.</summary>
    public FindingThresholds Thresholds { get; }

    /// <summary>The engine's version, with a mark of what was changed: stored results of another version are rebuilt.</summary>
    public string Version { get; }

    /// <summary>Makes settings from names and numbers.</summary>
    /// <param name="changes">"uncertainties:" with a code of <see cref="UncertaintyCodes"/>, or "thresholds:" with a property of <see cref="FindingThresholds"/> in camel case; numbers with a point.</param>
    /// <param name="language">Language of the issues.</param>
    /// <returns>The settings, or every name that is not known and every value that is no number.</returns>
    public static (EngineSettings? Settings, IReadOnlyList<Issue> Issues) From(IEnumerable<KeyValuePair<string, string?>> changes, Language language = Language.English)
    {
        var issues = new List<Issue>();
        var (uncertainties, thresholds) = (UncertaintyTable.Default, FindingThresholds.Default with { });
        var mark = new StringBuilder();
        foreach (var (name, text) in changes.OrderBy(change => change.Key, StringComparer.OrdinalIgnoreCase))
        {
            var (group, code) = name.Split(':', 2) is [var first, var second] ? (first, second) : (name, "");
            var row = Is(group, "uncertainties") ? uncertainties.Rows.FirstOrDefault(r => Is(r.Code, code)) : null;
            var threshold = Is(group, "thresholds")
                ? typeof(FindingThresholds).GetProperties(BindingFlags.Public | BindingFlags.Instance).FirstOrDefault(p => p.PropertyType == typeof(Threshold) && Is(p.Name, code))
                : null;
            if (row is null && threshold is null)
            {
                issues.Add(new Issue(name, "name", Unknown.In(language, name)));
            }
            else if (!double.TryParse(text, NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent, CultureInfo.InvariantCulture, out var value) || !double.IsFinite(value))
            {
                issues.Add(new Issue(name, "number", NotANumber.In(language, name, text)));
            }
            else
            {
                mark.Append(CultureInfo.InvariantCulture, $"{name.ToLowerInvariant()}={value:R};");
                uncertainties = row is null ? uncertainties : uncertainties.With(row.Code, value, OfInstallation.En);
                threshold?.SetValue(thresholds, new Threshold(value, OfInstallation));
            }
        }

        if (issues.Count > 0)
        {
            return (null, issues);
        }

        var version = mark.Length == 0
            ? Assessment.EngineVersion
            : $"{Assessment.EngineVersion}-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(mark.ToString())))[..8]}";
        return (new EngineSettings(uncertainties, thresholds, version), []);
    }

    private static bool Is(string a, string b) => a.Equals(b, StringComparison.OrdinalIgnoreCase);
}
