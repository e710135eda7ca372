using System.Text.Json;
using LogBook.Bank.Firms;
using LogBook.Bank.Runs;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Tests.Assessments;

/// <summary>When nothing but counts comes in, only the rules that are marked for it are asked again: the others must not depend on counts.</summary>
public class LateCountTests
{
    [Fact]
    public void Judge_ResultsOfCountsCameIn_ChangesOnlyRulesThatReadCounts()
    {
        var firm = FirmDraw.Of(21, 5, 8);
        var setUp = new FirmSetUp(firm.Document);
        var changed = new HashSet<string>();
        foreach (var system in firm.Systems)
        {
            var history = SystemHistory.From(setUp, system.Site.Code, system.Known.Code, SystemRun.Of(system, firm).Visits);
            VisitFacts? before = null, after = null;
            foreach (var visit in history.Visits)
            {
                before = new VisitFacts(history, WithoutCounts(visit), before);
                after = new VisitFacts(history, visit, after);
                foreach (var rule in FindingRules.All)
                {
                    if (Said(rule, before) != Said(rule, after))
                    {
                        changed.Add(rule.Kind);
                        Assert.True(rule is IReadsCounts, $"{rule.Kind} at {system.Known.Site} on {visit.At:yyyy-MM-dd}");
                    }
                }
            }
        }

        Assert.Contains(FindingKinds.ClockDue, changed);
    }

    private static SystemVisit WithoutCounts(SystemVisit visit) => visit with
    {
        Record = visit.Record with
        {
            Readings = [.. visit.Record.Readings.Select(reading => TestCodes.IsCount(reading.Test)
                ? reading with { Value = null, Drops = null, Qualifier = null, NotQuantifiable = null, NotTaken = SystemVisit.ResultPending, ResultAt = null }
                : reading)],
        },
    };

    private static string Said(IFindingRule rule, VisitFacts visit) => JsonSerializer.Serialize(rule.Judge(visit, FindingThresholds.Default).ToList());
}
