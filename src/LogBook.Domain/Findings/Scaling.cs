using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Findings;

/// <summary>Water beyond what inhibitors usually hold: Langelier index or silica above its limit.</summary>
/// <remarks>
/// Never an index above zero: treated towers run at +1 to +2 by design. An index says where equilibrium lies, not what forms; so it is
/// "watch" until the water itself lags (<see cref="Depositing"/>).
/// </remarks>
public sealed class Scaling : IFindingRule
{
    private static readonly Text SaysIndex = new(
        "The Langelier index is {0} at the hottest temperature measured (limit {1}, {2}).",
        "El índice de Langelier es {0} a la temperatura más alta medida (límite {1}, {2}).",
        "O índice de Langelier é {0} na temperatura mais alta medida (limite {1}, {2}).");

    private static readonly Text SaysSilica = new(
        "Silica is {0} (limit {1}, {2}).", "La sílice es {0} (límite {1}, {2}).", "A sílica é {0} (limite {1}, {2}).");

    private static readonly Text Index = new("Langelier index", "índice de Langelier", "índice de Langelier");
    private static readonly Text Silica = new("silica in the tower water", "sílice en el agua de la torre", "sílica na água da torre");

    private static readonly (string, Said)[] Causes =
    [
        Looks.Cause(FindingKinds.CyclesHigh, "cycles above what the water bears", "ciclos por encima de lo que admite el agua", "ciclos acima do que a água suporta"),
        Looks.Cause(FindingKinds.MakeUpChanged, "the make-up is harder or more alkaline", "la reposición es más dura o alcalina", "a reposição está mais dura ou alcalina"),
        Looks.Reading,
    ];

    private static readonly Said[] Next =
    [
        Looks.Say("Test pH and hardness again at once after sampling.", "Analice otra vez pH y dureza justo tras la toma.", "Teste de novo pH e dureza logo após a coleta."),
        Looks.Say("Compare with the limit of the inhibitor's supplier.", "Compare con el límite del suministrador del inhibidor.", "Compare com o limite do fornecedor do inibidor."),
        Looks.Say("Look at warm surfaces and the fill.", "Mire las superficies calientes y el relleno.", "Veja as superfícies quentes e o enchimento."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.Scaling;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        if (visit.Unsettled is { } reason)
        {
            yield return Verdict.NotJudged(null, reason);
            yield break;
        }

        var index = WaterIndex.Langelier(visit);
        if (index.HasValue)
        {
            yield return index.Value.Value > thresholds.LangelierHigh.Value
                ? Verdict.Found(null, Shown(visit, SaysIndex, Index, index.Value, thresholds.LangelierHigh, new Amount(thresholds.LangelierHigh.Value, "1"), thresholds))
                : Verdict.Clear();
        }

        if (visit.TowerReading(TestCodes.Silica) is { } silica)
        {
            var about = visit.History.Subjects.Test(TestCodes.Silica);
            yield return silica.Value.Value > thresholds.SilicaHigh.Value && silica.Reading.Qualifier != "<"
                ? Verdict.Found(about, Shown(visit, SaysSilica, Silica, silica.Value, thresholds.SilicaHigh, new Amount(thresholds.SilicaHigh.Value, "mg/L"), thresholds))
                : Verdict.Clear(about);
        }
    }

    private static Indication Shown(VisitFacts visit, Text says, Text what, Estimate value, Threshold limit, Amount shown, FindingThresholds thresholds) => new(
        Depositing.IsFound(visit, thresholds) == true ? Severity.Plan : Severity.Watch,
        new Said(says, value, shown, limit.Basis))
    {
        Evidence = [EvidenceFigure.Of(what, value, limitHigh: limit.Value)],
        Suggests = Causes,
        LookAtNext = Next,
    };
}
