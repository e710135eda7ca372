using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Assessments;

/// <summary>Thresholds and default uncertainties in force: the defaults, what an installation has put in their place, and above that what it has set for one system.</summary>
public sealed class EngineSettings
{
    private static readonly Text Unknown = new(
        "{0} is not a threshold or default uncertainty.", "{0} no es un umbral ni una incertidumbre por defecto.", "{0} não é um limiar nem uma incerteza padrão.");

    private static readonly Text OutOfRange = new(
        "{0}: {1} was found; expected is a number of {2}.", "{0}: se encontró {1}; se espera un número de {2}.", "{0}: encontrado {1}; esperado um número de {2}.");

    private static readonly Text NotWhole = new(
        "{0}: {1} was found; expected is a whole number of {2}.", "{0}: se encontró {1}; se espera un número entero de {2}.", "{0}: encontrado {1}; esperado um número inteiro de {2}.");

    private static readonly Text OnlyOfFirm = new(
        "{0} is about several systems together; expected is one value for the whole firm.",
        "{0} trata de varios sistemas a la vez; se espera un valor para toda la empresa.",
        "{0} trata de vários sistemas juntos; esperado um valor para toda a empresa.");

    private static readonly Text WrongOrder = new(
        "{0}: {1} was found; expected is less than {2} ({3}).", "{0}: se encontró {1}; se espera menos de {2} ({3}).", "{0}: encontrado {1}; esperado menos de {2} ({3}).");

    private static readonly Text OfInstallation = new("set by this installation", "fijado por esta instalación", "definido por esta instalação");

    private static readonly Text OfSystem = new("set for this system", "fijado para este sistema", "definido para este sistema");

    private readonly Dictionary<string, EngineSettings> _systems = new(StringComparer.OrdinalIgnoreCase);

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

    /// <summary>Settings with changes.</summary>
    /// <param name="changes">Changes of the firm and of single systems; what is not known, out of its range or not for a system is passed over, so that an older program can read newer records.</param>
    /// <returns>The settings of the firm; those of a system by <see cref="For"/>.</returns>
    public static EngineSettings Of(IEnumerable<EngineSettingChange> changes)
    {
        var good = changes.Where(change => Fault(change, Language.English) is null).OrderBy(change => change.Code, StringComparer.OrdinalIgnoreCase).ToList();
        if (good.Count == 0)
        {
            return Default;
        }

        var ofFirm = good.Where(change => change.System is null).ToList();
        var firm = With(ofFirm, []);
        foreach (var system in good.Where(change => change.System is not null).GroupBy(KeyOf, StringComparer.OrdinalIgnoreCase))
        {
            firm._systems[system.Key] = With(ofFirm, [.. system]);
        }

        return firm;
    }

    /// <summary>Checks changes: each by itself, and those that must keep their order.</summary>
    /// <param name="changes">All that is to be in force.</param>
    /// <param name="language">Language of the issues.</param>
    /// <returns>Issues with the code of the setting as path; empty when all is well.</returns>
    public static IReadOnlyList<Issue> Check(IReadOnlyList<EngineSettingChange> changes, Language language = Language.English)
    {
        var faults = changes.Select(change => Fault(change, language)).OfType<Issue>().ToList();
        if (faults.Count > 0)
        {
            return faults;
        }

        var ofFirm = Values(changes.Where(change => change.System is null));
        return
        [
            .. Misordered(ofFirm, language),
            .. changes.Where(change => change.System is not null).GroupBy(KeyOf, StringComparer.OrdinalIgnoreCase)
                .SelectMany(system => Misordered(new Dictionary<string, double>(ofFirm.Concat(Values(system)).GroupBy(pair => pair.Key, StringComparer.OrdinalIgnoreCase)
                    .Select(group => KeyValuePair.Create(group.Key, group.Last().Value)), StringComparer.OrdinalIgnoreCase), language)),
        ];
    }

    /// <summary>What holds for one system.</summary>
    /// <param name="site">Code of the site.</param>
    /// <param name="system">Code of the system.</param>
    /// <returns>The system's own settings, or these.</returns>
    public EngineSettings For(string site, string system) => _systems.GetValueOrDefault($"{site}/{system}") ?? this;

    private static string KeyOf(EngineSettingChange change) => $"{change.Site}/{change.System}";

    private static Dictionary<string, double> Values(IEnumerable<EngineSettingChange> changes)
    {
        var values = new Dictionary<string, double>(StringComparer.OrdinalIgnoreCase);
        foreach (var change in changes)
        {
            values[change.Code] = change.Value;
        }

        return values;
    }

    private static Issue? Fault(EngineSettingChange change, Language language)
    {
        if (EngineSettingCatalogue.Find(change.Code) is not { } setting)
        {
            return new Issue(change.Code, "name", Unknown.In(language, change.Code));
        }

        if (change.System is not null && setting.IsOfFirm)
        {
            return new Issue(setting.Code, "firm", OnlyOfFirm.In(language, setting.Name));
        }

        if (double.IsFinite(change.Value) && change.Value >= setting.Lowest && change.Value <= setting.Highest && (!setting.IsWhole || change.Value == Math.Round(change.Value)))
        {
            return null;
        }

        var found = double.IsFinite(change.Value) ? Shown.PlainWithUnit(change.Value, setting.Unit, language) : "–";
        return new Issue(setting.Code, "range", (setting.IsWhole ? NotWhole : OutOfRange).In(language, setting.Name, found, Shown.Range(setting.Lowest, setting.Highest, setting.Unit, language)));
    }

    private static IEnumerable<Issue> Misordered(IReadOnlyDictionary<string, double> changed, Language language)
    {
        foreach (var (lower, upper) in EngineSettingCatalogue.Ordered.Where(pair => changed.ContainsKey(pair.Lower) || changed.ContainsKey(pair.Upper)))
        {
            var (below, above) = (EngineSettingCatalogue.Find(lower)!, EngineSettingCatalogue.Find(upper)!);
            var (low, high) = (changed.GetValueOrDefault(lower, below.Default), changed.GetValueOrDefault(upper, above.Default));
            if (low >= high)
            {
                yield return new Issue(
                    below.Code, "order", WrongOrder.In(language, below.Name, Shown.PlainWithUnit(low, below.Unit, language), Shown.PlainWithUnit(high, above.Unit, language), above.Name));
            }
        }
    }

    private static EngineSettings With(IReadOnlyList<EngineSettingChange> ofFirm, IReadOnlyList<EngineSettingChange> ofSystem)
    {
        var (uncertainties, thresholds) = (UncertaintyTable.Default, FindingThresholds.Default with { });
        var mark = new StringBuilder();
        foreach (var (change, basis) in ofFirm.Select(change => (change, OfInstallation)).Concat(ofSystem.Select(change => (change, OfSystem))))
        {
            mark.Append(CultureInfo.InvariantCulture, $"{change.Code.ToLowerInvariant()}={change.Value:R};");
            if (EngineSettingCatalogue.UncertaintyOf(change.Code) is { } code)
            {
                uncertainties = uncertainties.With(uncertainties.Rows.First(row => row.Code.Equals(code, StringComparison.OrdinalIgnoreCase)).Code, change.Value, basis.En);
            }
            else
            {
                EngineSettingCatalogue.PropertyOf(change.Code)!.SetValue(thresholds, new Threshold(change.Value, basis));
            }
        }

        var version = mark.Length == 0
            ? Assessment.EngineVersion
            : $"{Assessment.EngineVersion}-{Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(mark.ToString())))[..8]}";
        return new EngineSettings(uncertainties, thresholds, version);
    }
}
