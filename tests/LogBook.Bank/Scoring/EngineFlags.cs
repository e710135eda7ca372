using LogBook.Bank.Runs;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;

namespace LogBook.Bank.Scoring;

/// <summary>The engine as judge: it gets set-up and visits, nothing else.</summary>
internal static class EngineFlags
{
    public static IReadOnlyList<Flag> Of(Course course, FirmSetUp firm, DateTime asOf)
    {
        var history = SystemHistory.From(firm, course.System.Site.Code, course.System.Known.Code, course.Visits);
        return [.. Assessment.Of(history, asOf).Findings.Select(FlagOf)];
    }

    public static Flag FlagOf(AssessedFinding finding)
    {
        var told = finding.InEnglish;
        var raised = finding.Course.Where(step => step.Severity >= Severity.Plan).Select(step => (DateOnly?)step.On).FirstOrDefault();
        var about = told.About is { } a ? string.Join(' ', new[] { a.Probe, a.Drum, a.Output, a.Meter, a.Pump, a.Test, a.Instrument, a.Lot, a.Person, a.Rule }.Where(part => part is not null)) : "";
        return new Flag(told.Kind, about, told.FirstSeen, raised, told.ClosedOn, finding.Course.Max(step => step.Severity), told.Text);
    }
}
