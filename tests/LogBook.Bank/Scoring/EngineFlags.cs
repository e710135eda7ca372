using LogBook.Bank.Runs;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;

namespace LogBook.Bank.Scoring;

/// <summary>The engine as judge: it gets set-up and visits, nothing else.</summary>
internal static class EngineFlags
{
    /// <summary>All systems of a firm and what they show together.</summary>
    public static (IReadOnlyList<IReadOnlyList<Flag>> Systems, IReadOnlyList<Flag> Round) Of(IReadOnlyList<Course> courses, FirmSetUp firm, DateTime asOf)
    {
        var histories = courses.Select(c => SystemHistory.From(firm, c.System.Site.Code, c.System.Known.Code, c.Visits)).ToList();
        var assessed = new SystemAssessment[histories.Count];
        Each(histories.Count, i => assessed[i] = Assessment.Of(histories[i], asOf));
        var round = RoundAssessment.Of(firm, assessed.Select(system => system.Clues), asOf);
        Each(histories.Count, i =>
        {
            if (RoundAssessment.ShiftsOf(round, assessed[i].Clues) is { Count: > 0 } shifts)
            {
                assessed[i] = Assessment.Of(histories[i], asOf, new AssessmentInputs { Shifts = shifts });
            }
        });
        return ([.. assessed.Select(IReadOnlyList<Flag> (system) => [.. system.Findings.Select(FlagOf)])], [.. round.Findings.Select(FlagOf)]);
    }

    private static void Each(int count, Action<int> body) => Parallel.For(0, count, new ParallelOptions { MaxDegreeOfParallelism = 2 }, body);

    private static Flag FlagOf(AssessedFinding finding)
    {
        var told = finding.InEnglish;
        var raised = finding.Course.Where(step => step.Severity >= Severity.Plan).Select(step => (DateOnly?)step.On).FirstOrDefault();
        var about = told.About is { } a ? string.Join(' ', new[] { a.Probe, a.Drum, a.Output, a.Meter, a.Pump, a.Test, a.Instrument, a.Lot, a.Person, a.Rule }.Where(part => part is not null)) : "";
        return new Flag(told.Kind, about, told.FirstSeen, raised, told.ClosedOn, finding.Course.Max(step => step.Severity), told.Text) { Steps = finding.Course };
    }
}
