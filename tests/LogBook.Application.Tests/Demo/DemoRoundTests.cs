using LogBook.Application.Demo;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;

namespace LogBook.Application.Tests.Demo;

/// <summary>Stories of the demo firm that only all systems together can tell.</summary>
public class DemoRoundTests(DemoFirmFixture fixture) : IClassFixture<DemoFirmFixture>
{
    private FirmAssessment Assess(DateTime asOf)
    {
        var document = fixture.Firm.Document;
        var firm = new FirmSetUp(document);
        return RoundAssessment.Of([.. document.Systems.Select(system => SystemHistory.From(firm, system.Site, system.Code, document.Visits))], asOf);
    }

    [Fact]
    public void Of_DemoFirm_FindsMeterLotAndRecordInTimeAndWithdrawsWhatTheyExplain()
    {
        var firm = Assess(new DateTime(2027, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        var round = firm.Round.Findings.Select(finding => finding.InEnglish).ToList();

        // ST13: third site on 7 July. ST14: third site on 4 September. ST6: after two of his visits, the second on 10 April.
        var lot = round.First(finding => finding.About!.Lot == "IN-0633");
        var meter = round.First(finding => finding.About!.Instrument == "HM-2");
        var person = round.Single(finding => finding.Kind == FindingKinds.SecondLook);
        Assert.InRange(lot.FirstSeen, new DateOnly(2026, 7, 1), new DateOnly(2026, 7, 21));
        Assert.InRange(meter.FirstSeen, new DateOnly(2026, 9, 1), new DateOnly(2026, 9, 16));
        Assert.Equal("TNU", person.About!.Person);
        Assert.InRange(person.FirstSeen, new DateOnly(2026, 3, 19), new DateOnly(2026, 4, 10));
        Assert.DoesNotContain(round, finding => finding.FirstSeen < new DateOnly(2026, 3, 1));

        Assert.Empty(Headlines(firm, ["NUR-1", "GRO-1", "UMB-1", "PLU-1", "JOR-1", "TOL-1"], lot.FirstSeen, FindingKinds.ResidualHigh));
        Assert.Empty(Headlines(firm, ["SNE-1", "PLU-1", "LAN-1", "JOR-1", "HOB-1", "TOL-1"], meter.FirstSeen, FindingKinds.ProbeFouled, FindingKinds.ProbeReadsOff));
    }

    private static IEnumerable<Finding> Headlines(FirmAssessment firm, string[] sites, DateOnly from, params string[] kinds) => firm.Systems
        .Where(system => sites.Contains(system.Site))
        .SelectMany(system => system.Findings)
        .Select(finding => finding.InEnglish)
        .Where(finding => kinds.Contains(finding.Kind) && finding.Severity > Severity.Watch && finding.State != FindingState.Withdrawn && finding.LastSeen >= from);
}
