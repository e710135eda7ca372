using LogBook.Domain.Findings;

namespace LogBook.Domain.Assessments;

/// <summary>
/// One cause, one headline: what an open cause explains stays visible as "watch" under it. Kinds that must never be folded
/// (microbiology, dates due, labels and safety) are in no row.
/// </summary>
internal sealed class Folding
{
    // Cause, what it explains, and whether both must concern the same drum.
    private static readonly (string Cause, string Explains, bool SameDrum)[] Rows =
    [
        (FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff, false),
        (FindingKinds.ProbeFouled, FindingKinds.ConductivityOut, false),
        (FindingKinds.ProbeFouled, FindingKinds.CyclesLow, false),
        (FindingKinds.ProbeFouled, FindingKinds.CyclesHigh, false),
        (FindingKinds.ProbeFouled, FindingKinds.CyclesDisagree, false),
        (FindingKinds.MakeUpChanged, FindingKinds.CyclesLow, false),
        (FindingKinds.MakeUpChanged, FindingKinds.CyclesHigh, false),
        (FindingKinds.MakeUpChanged, FindingKinds.CyclesDisagree, false),
        (FindingKinds.WaterLoss, FindingKinds.CyclesLow, false),
        (FindingKinds.WaterLoss, FindingKinds.ConductivityOut, false),
        (FindingKinds.BleedNotClosing, FindingKinds.WaterLoss, false),
        (FindingKinds.BleedNotClosing, FindingKinds.CyclesLow, false),
        (FindingKinds.BleedNotClosing, FindingKinds.ConductivityOut, false),
        (FindingKinds.BleedNotFlowing, FindingKinds.CyclesHigh, false),
        (FindingKinds.BleedNotFlowing, FindingKinds.ConductivityOut, false),
        (FindingKinds.MeterStopped, FindingKinds.FeedLow, false),
        (FindingKinds.MeterStopped, FindingKinds.ResidualLow, false),
        (FindingKinds.PulsesLost, FindingKinds.FeedLow, false),
        (FindingKinds.PulsesLost, FindingKinds.ResidualLow, false),
        (FindingKinds.BiocideLapse, FindingKinds.DoseMissed, false),
        (FindingKinds.PumpOutput, FindingKinds.FeedLow, true),
        (FindingKinds.PumpOutput, FindingKinds.ResidualLow, false),
        (FindingKinds.OverfedThenEmpty, FindingKinds.FeedHigh, true),
        (FindingKinds.OverfedThenEmpty, FindingKinds.ResidualLow, false),
        (FindingKinds.OverfedThenEmpty, FindingKinds.RunsOut, true),
        (FindingKinds.WrongProduct, FindingKinds.ResidualLow, false),
        (FindingKinds.SettingsLost, FindingKinds.SettingsChanged, false),
        (FindingKinds.SettingsLost, FindingKinds.CyclesLow, false),
        (FindingKinds.SettingsLost, FindingKinds.DoseMissed, false),
    ];

    private readonly List<(string Kind, About? About)> _causes;

    /// <summary>Gathers the causes that hold after a step.</summary>
    /// <param name="open">Findings open before the step.</param>
    /// <param name="verdicts">Verdicts of the step.</param>
    public Folding(List<(string Kind, About? About, Severity Severity)> open, List<(string Kind, Verdict Verdict)> verdicts)
    {
        // A mere "watch" leads nothing: folding under it would leave no headline at all.
        _causes = new(open.Count);
        foreach (var (kind, about, severity) in open)
        {
            if (severity >= Severity.Plan && !IsJudged(verdicts, kind, about))
            {
                _causes.Add((kind, about));
            }
        }

        foreach (var (kind, verdict) in verdicts)
        {
            if (verdict is { ExplainedBy: null, Indication.Severity: >= Severity.Plan })
            {
                _causes.Add((kind, verdict.About));
            }
        }
    }

    /// <summary>Severity of a verdict after folding.</summary>
    /// <param name="kind">Kind of the finding.</param>
    /// <param name="verdict">Verdict of its rule.</param>
    /// <returns>"Watch" under a cause that explains it, else its own severity.</returns>
    public Severity SeverityOf(string kind, Verdict verdict)
    {
        if (verdict.Indication is not { } shown)
        {
            return Severity.Watch;
        }

        return _causes.Count > 0 && IsExplained(kind, verdict.About) ? Severity.Watch : shown.Severity;
    }

    private bool IsExplained(string kind, About? about)
    {
        foreach (var row in Rows)
        {
            if (row.Explains == kind && _causes.Exists(cause => cause.Kind == row.Cause && (!row.SameDrum || SameDrum(cause.About, about))))
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsJudged(List<(string Kind, Verdict Verdict)> verdicts, string kind, About? about)
    {
        for (var i = 0; i < verdicts.Count; i++)
        {
            if (verdicts[i].Kind == kind && verdicts[i].Verdict.NotJudgedBecause is null && MatterComparer.SameSubject(verdicts[i].Verdict.About, about))
            {
                return true;
            }
        }

        return false;
    }

    private static bool SameDrum(About? a, About? b) =>
        a?.Drum is null || b?.Drum is null || a.Drum.Equals(b.Drum, StringComparison.OrdinalIgnoreCase);
}
