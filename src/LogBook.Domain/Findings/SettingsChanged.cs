using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Settings found otherwise than they were last left.</summary>
/// <remarks>Decides at once. What was not read is not changed; a value that a new programme asks for is an agreed change.</remarks>
public sealed class SettingsChanged : IFindingRule
{
    private static readonly Text Says = new(
        "Changed since they were last left: {0}.", "Cambiado desde que se dejó por última vez: {0}.", "Mudou desde que foi deixado pela última vez: {0}.");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.SettingsChanged, "somebody on site changed it", "alguien del sitio lo cambió", "alguém do local mudou"),
        Looks.Cause(FindingKinds.SettingsLost, "power was lost or the controller restarted", "hubo corte de corriente o se reinició el controlador", "faltou energia ou o controlador reiniciou"),
        Looks.Cause("season", "an agreed change for the season", "un cambio acordado de temporada", "uma mudança combinada de estação"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Ask who changed it and why.", "Pregunte quién lo cambió y por qué.", "Pergunte quem mudou e por quê."),
        Looks.Say("Walk through all settings with the re-entry sheet.", "Repase todos los ajustes con la hoja de reingreso.", "Percorra todos os ajustes com a folha de reinserção."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.SettingsChanged;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        var comparisons = visit.SettingsCompared;
        if (comparisons.Count == 0)
        {
            yield break;
        }

        var changed = comparisons.Where(comparison => comparison.IsChanged).ToList();
        yield return changed.Count == 0
            ? Verdict.Clear()
            : Verdict.Found(null, new Indication(changed.Exists(c => WantsAct(c, thresholds)) ? Severity.Act : Severity.Plan, new Said(Says, List(changed)))
            {
                Evidence = [.. changed.Select(Evidence)],
                Suggests = Causes,
                LookAtNext = Next,
            });
    }

    // Limits, feeds, dose plan, and the set point by more than 10 %.
    private static bool WantsAct(SettingsComparison comparison, FindingThresholds thresholds)
    {
        var name = comparison.Name;
        if (name.Contains('/', StringComparison.Ordinal) || name is "highAlarmUsPerCm" or "lowAlarmUsPerCm" or "longestBleedMin" or "planWeeks")
        {
            return true;
        }

        return name == "setPointUsPerCm"
            && (comparison.Left.Number is not { } left || comparison.Found.Number is not { } found || left == 0
                || Math.Abs(found - left) / left * 100 > thresholds.SetPointPercent.Value);
    }

    internal static EvidenceFigure Evidence(SettingsComparison comparison)
    {
        var words = $"{comparison.Name}: {comparison.Left} → {comparison.Found}";
        return new EvidenceFigure(
            new Text(words, words, words),
            comparison.Found.Number,
            comparison.Unit ?? "1",
            LimitLow: comparison.Left.Number,
            LimitHigh: comparison.Left.Number);
    }

    internal static Text List(IEnumerable<SettingsComparison> changed)
    {
        var words = string.Join("; ", changed.Select(c => $"{c.Name} {c.Left} → {c.Found}"));
        return new Text(words, words, words);
    }
}
