using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>Many settings changed at once, or the dose plan is empty: the controller fell back to its defaults.</summary>
/// <remarks>Decides at once.</remarks>
public sealed class SettingsLost : IFindingRule
{
    private static readonly Text Many = new(
        "{0} of {1} settings read differ from what they were left at (limits {2} and {3}, {4}): {5}.",
        "{0} de {1} ajustes leídos difieren de como se dejaron (límites {2} y {3}, {4}): {5}.",
        "{0} de {1} ajustes lidos diferem de como foram deixados (limites {2} e {3}, {4}): {5}.");

    private static readonly Text NoPlan = new(
        "The dose plan is empty: {0}.", "El plan de dosis está vacío: {0}.", "O plano de dose está vazio: {0}.");

    private static readonly Text Changed = new("settings that differ", "ajustes que difieren", "ajustes que diferem");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.SettingsLost, "the controller restarted with its defaults", "el controlador arrancó con sus valores de fábrica", "o controlador reiniciou com seus valores de fábrica"),
        Looks.Cause(FindingKinds.SettingsChanged, "the controller was renewed or somebody entered all anew", "se cambió el controlador o alguien lo reingresó todo", "o controlador foi trocado ou alguém reinseriu tudo"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Enter all settings again from the re-entry sheet.", "Reingrese todos los ajustes con la hoja de reingreso.", "Reinsira todos os ajustes com a folha de reinserção."),
        Looks.Say("Look at biocide drum and last dose: none may have run since.", "Mire el bidón de biocida y la última dosis: quizá no se aplicó ninguna desde entonces.", "Veja a bombona de biocida e a última dose: talvez nenhuma tenha sido aplicada desde então."),
        Looks.Say("Find out when power was lost.", "Averigüe cuándo hubo corte de corriente.", "Descubra quando faltou energia."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.SettingsLost;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        var compared = visit.SettingsCompared;
        if (compared.Count == 0)
        {
            yield break;
        }

        if (!compared.Any(comparison => comparison.IsChanged))
        {
            yield return Verdict.Clear();
            yield break;
        }

        var changed = compared.Where(comparison => comparison.IsChanged).ToList();
        var emptied = changed.Where(IsEmptiedPlan).ToList();
        var many = changed.Count >= thresholds.SettingsLostCount.Value && 100.0 * changed.Count / compared.Count >= thresholds.SettingsLostPercent.Value;
        if (!many && emptied.Count == 0)
        {
            yield return Verdict.Clear();
            yield break;
        }

        yield return Verdict.Found(null, new Indication(
            Severity.Act,
            many
                ? new Said(Many, (double)changed.Count, (double)compared.Count, thresholds.SettingsLostCount.Value, new Amount(thresholds.SettingsLostPercent.Value, "%"), thresholds.SettingsLostCount.Basis, SettingsChanged.List(changed))
                : new Said(NoPlan, SettingsChanged.List(emptied)))
        {
            Evidence =
            [
                new EvidenceFigure(Changed, changed.Count, "1", LimitHigh: thresholds.SettingsLostCount.Value),
                .. changed.Select(SettingsChanged.Evidence),
            ],
            Suggests = Causes,
            LookAtNext = Next,
        });
    }

    private static bool IsEmptiedPlan(SettingsComparison comparison) =>
        (comparison.Name.EndsWith("/starts", StringComparison.Ordinal) || comparison.Name.EndsWith("/weeks", StringComparison.Ordinal) || comparison.Name.EndsWith("/days", StringComparison.Ordinal))
        && !comparison.Left.IsNone && (comparison.Found.IsNone || comparison.Found.Text is { Length: 0 });
}
