using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Findings;

/// <summary>An output found, or left, on something else than automatic without a reason.</summary>
/// <remarks>Decides at once. An agreed lay-up is told by the reason beside the switch.</remarks>
public sealed class SwitchNotAutomatic : IFindingRule
{
    private static readonly Text ForcedOn = new("forced on", "forzado a marcha", "forçado ligado");
    private static readonly Text ForcedOff = new("forced off", "forzado a paro", "forçado desligado");

    private static readonly Text WasLeft = new(
        "Output {0} was left {1} without a reason; only automatic lets the controller decide.",
        "La salida {0} se dejó en {1} sin motivo; solo en automático decide el controlador.",
        "A saída {0} foi deixada em {1} sem motivo; só no automático o controlador decide.");

    private static readonly Text WasFound = new(
        "Output {0} was found {1}; it had run {2} since the last visit.",
        "La salida {0} se encontró en {1}; había marchado {2} desde la última visita.",
        "A saída {0} foi encontrada em {1}; tinha funcionado {2} desde a última visita.");

    private static readonly Text WasFoundNoHours = new(
        "Output {0} was found {1}; for how long is not known.",
        "La salida {0} se encontró en {1}; no se sabe desde cuándo.",
        "A saída {0} foi encontrada em {1}; não se sabe desde quando.");

    private static readonly Text HoursSince = new("hours run since the last visit", "horas de marcha desde la última visita", "horas de funcionamento desde a última visita");

    private static readonly Said[] Next =
    [
        new(new(
            "Put it back to automatic, with nobody at the equipment and lines connected.",
            "Vuelva a ponerla en automático, sin nadie en el equipo y con las líneas conectadas.",
            "Volte a colocá-la em automático, sem ninguém no equipamento e com as linhas conectadas.")),
        new(new(
            "Look at the level of its drum and the residual in the water.",
            "Mire el nivel de su bidón y el residual en el agua.",
            "Veja o nível da sua bombona e o residual na água.")),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.SwitchNotAutomatic;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        foreach (var reading in visit.Record.Switches)
        {
            var about = visit.History.Subjects.Output(reading.Output);
            var left = reading.Left ?? reading.Found;
            if (reading.Reason is null && left is { } stays && stays != SwitchPosition.Automatic)
            {
                yield return Verdict.Found(about, new Indication(Severity.Act, new Said(WasLeft, reading.Output, NameOf(stays))) { LookAtNext = Next });
            }
            else if (reading.Reason is null && reading.Found is { } found && found != SwitchPosition.Automatic)
            {
                yield return Verdict.Found(about, Found(visit, reading.Output, found));
            }
            else
            {
                yield return Verdict.Clear(about);
            }
        }
    }

    private static Indication Found(VisitFacts visit, string output, SwitchPosition position)
    {
        var hours = visit.HoursRun(output);
        return hours is { HasValue: true }
            ? new Indication(Severity.Plan, new Said(WasFound, output, NameOf(position), new Amount(hours.Value.Value, "h")))
            {
                Evidence = [EvidenceFigure.Of(HoursSince, hours.Value)],
                LookAtNext = Next,
            }
            : new Indication(Severity.Plan, new Said(WasFoundNoHours, output, NameOf(position))) { LookAtNext = Next };
    }

    private static Text NameOf(SwitchPosition position) => position == SwitchPosition.ForcedOn ? ForcedOn : ForcedOff;
}
