using LogBook.Domain.Clocks;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>In use, and every biocide empty, off, missed or without residual for days.</summary>
/// <remarks>
/// More than 3 days in use "plan", more than 7 days "act", at once. Counted from the latest moment at which any of them may
/// have worked; where the records of one biocide do not tell, nothing is claimed.
/// </remarks>
public sealed class BiocideLapse : IFindingRule
{
    private static readonly Text Says = new(
        "No biocide has worked for at least {0} days in use (limits {1} and {2} days, {3}): {4}. This may start a duty to sample.",
        "Ningún biocida ha actuado desde hace al menos {0} días en uso (límites {1} y {2} días, {3}): {4}. Esto puede obligar a muestrear.",
        "Nenhum biocida atuou há pelo menos {0} dias em uso (limites {1} e {2} dias, {3}): {4}. Isso pode obrigar a amostrar.");

    private static readonly Text DidNotRun = new("{0} did not run", "{0} no se dosificó", "{0} não foi dosado");
    private static readonly Text Empty = new("the drum of {0} is empty", "el bidón de {0} está vacío", "a bombona de {0} está vazia");
    private static readonly Text NotPoured = new("{0} was not poured", "{0} no se vertió", "{0} não foi despejado");
    private static readonly Text NoResidual = new("{0} leaves no residual", "{0} no deja residual", "{0} não deixa residual");
    private static readonly Text And = new("{0}; {1}", "{0}; {1}", "{0}; {1}");
    private static readonly Text Days = new("days in use without a working biocide", "días en uso sin biocida que actúe", "dias em uso sem biocida que atue");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.RunsOut, "the drum ran empty", "el bidón se vació", "a bombona esvaziou"),
        Looks.Cause(FindingKinds.SwitchNotAutomatic, "outputs are off or their plan is empty", "las salidas están desconectadas o su plan vacío", "as saídas estão desligadas ou seu plano vazio"),
        Looks.Cause(FindingKinds.PumpOutput, "the pump runs and draws nothing", "la bomba marcha y no aspira", "a bomba funciona e não aspira"),
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Look at switches, dose plan, drums and injection lines.", "Mire selectores, plan de dosis, bidones y líneas de inyección.", "Veja chaves, plano de dose, bombonas e linhas de injeção."),
        Looks.Say("Tell the customer and the supervisor today; see whether the rule asks for a sample.", "Avise hoy al cliente y al supervisor; vea si la norma pide una muestra.", "Avise hoje o cliente e o supervisor; veja se a norma pede uma amostra."),
        Looks.LabelFirst,
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.BiocideLapse;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Record.Running == false || visit.Record.InUse == false)
        {
            yield return Verdict.NotJudged(null, VisitReasons.Idle);
            yield break;
        }

        var covers = BiocideCover.Of(visit);
        if (covers.Count == 0)
        {
            yield break;
        }

        if (covers.Any(cover => cover.Why == BiocideGap.Works))
        {
            yield return Verdict.Clear();
            yield break;
        }

        if (covers.Any(cover => cover.LastWorked is null))
        {
            yield return Verdict.NotJudged(null, VisitReasons.NotMeasured);
            yield break;
        }

        var last = covers.Max(cover => cover.LastWorked!.Value);
        var days = Math.Min((visit.Visit.At - last).TotalDays, OperatingDays.Between(visit.History.System.Operation, visit.History.DayOf(last), visit.Day));
        yield return days > thresholds.BiocideLapsePlanDays.Value ? Verdict.Found(null, Shown(covers, days, thresholds)) : Verdict.Clear();
    }

    private static Indication Shown(IReadOnlyList<BiocideCover> covers, double days, FindingThresholds thresholds) => new(
        days > thresholds.BiocideLapseActDays.Value ? Severity.Act : Severity.Plan,
        new Said(
            Says,
            Math.Floor(days),
            thresholds.BiocideLapsePlanDays.Value,
            thresholds.BiocideLapseActDays.Value,
            thresholds.BiocideLapsePlanDays.Basis,
            covers.Select(Of).Aggregate((a, b) => new Said(And, a, b))))
    {
        Evidence = [new EvidenceFigure(Days, days, "d", LimitHigh: thresholds.BiocideLapsePlanDays.Value)],
        Suggests = Causes,
        LookAtNext = Next,
    };

    private static Said Of(BiocideCover cover) => new(
        cover.Why switch
        {
            BiocideGap.Empty => Empty,
            BiocideGap.NotPoured => NotPoured,
            BiocideGap.NoResidual => NoResidual,
            _ => DidNotRun,
        },
        cover.Name);
}
