using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Findings;

/// <summary>An alarm that stands at the visit.</summary>
/// <remarks>
/// Texts of controllers are not read: the output it belongs to decides. On the bleed or a biocide "act", else "plan". One without
/// an output at an idle plant is not judged: no flow is what an idle plant has.
/// </remarks>
public sealed class AlarmStanding : IFindingRule
{
    private static readonly Text Says = new("Alarm standing at {0}: “{1}”.", "Alarma presente en {0}: «{1}».", "Alarme presente em {0}: “{1}”.");
    private static readonly Text SaysNoOutput = new("Alarm standing: “{0}”.", "Alarma presente: «{0}».", "Alarme presente: “{0}”.");
    private static readonly Text Alarms = new("alarms standing", "alarmas presentes", "alarmes presentes");

    private static readonly Said[] Next =
    [
        Looks.Say("Find out since when it stands and what it belongs to.", "Averigüe desde cuándo está y a qué corresponde.", "Descubra desde quando está e a que pertence."),
        Looks.Say("Cure the cause before clearing it.", "Corrija la causa antes de borrarla.", "Corrija a causa antes de apagá-lo."),
    ];

    /// <inheritdoc />
    public string Kind => FindingKinds.AlarmStanding;

    /// <inheritdoc />
    public IEnumerable<Verdict> Judge(VisitFacts visit, FindingThresholds thresholds)
    {
        var standing = visit.Record.Alarms.Where(alarm => alarm.Standing == true).ToLookup(alarm => alarm.Output ?? "", StringComparer.OrdinalIgnoreCase);
        foreach (var group in standing)
        {
            var about = group.Key.Length == 0 ? null : visit.History.Subjects.Output(group.Key);
            if (about is null && visit.Record.Running == false)
            {
                yield return Verdict.NotJudged(null, VisitReasons.Idle);
                continue;
            }

            var words = string.Join("; ", group.Select(alarm => alarm.Text));
            yield return Verdict.Found(about, new Indication(
                about is not null && WantsAct(visit, group.Key) ? Severity.Act : Severity.Plan,
                about is null ? new Said(SaysNoOutput, words) : new Said(Says, group.Key, words))
            {
                Evidence = [new EvidenceFigure(Alarms, group.Count(), "1", LimitHigh: 0)],
                LookAtNext = Next,
            });
        }

        // The alarm list is looked at on every visit of the round that reads the controller at all.
        if (visit.Record.Settings.Count > 0 || visit.Record.HoursRun.Count > 0 || visit.Record.Alarms.Count > 0)
        {
            foreach (var output in visit.History.System.Outputs.Where(output => !standing.Contains(output.Code)))
            {
                yield return Verdict.Clear(visit.History.Subjects.Output(output.Code));
            }

            if (!standing.Contains(""))
            {
                yield return Verdict.Clear();
            }
        }
    }

    private static bool WantsAct(VisitFacts visit, string code)
    {
        var system = visit.History.System;
        if (system.Outputs.FirstOrDefault(output => output.Code.Equals(code, StringComparison.OrdinalIgnoreCase))?.Drives == OutputDrives.Bleed)
        {
            return true;
        }

        var drums = system.Pumps.Where(pump => pump.Output.Equals(code, StringComparison.OrdinalIgnoreCase)).Select(pump => pump.Drum);
        return system.Drums.Any(drum => drums.Contains(drum.Code, StringComparer.OrdinalIgnoreCase)
            && visit.History.Firm.Products.GetValueOrDefault(drum.Product)?.Kind == ProductKind.Biocide);
    }
}
