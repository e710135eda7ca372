using LogBook.Application.Demo;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using Xunit;

namespace LogBook.Application.Tests.Demo;

/// <summary>The demo firm's stories of water and dose plan, found in time by their own kinds.</summary>
public class DemoWaterFindingsTests(DemoFirmFixture fixture) : IClassFixture<DemoFirmFixture>
{
    private static readonly DateTime AsOf = new(2026, 12, 31, 23, 0, 0, DateTimeKind.Utc);

    private static readonly string[] WaterAndPlan =
    [
        FindingKinds.WaterLoss, FindingKinds.BleedNotFlowing, FindingKinds.BleedNotClosing, FindingKinds.Depositing, FindingKinds.MakeUpChanged, FindingKinds.Scaling,
        FindingKinds.Corrosive, FindingKinds.DosePlanClash, FindingKinds.DoseUntreated, FindingKinds.HoldTooLong, FindingKinds.RestartUnproved,
    ];

    [Theory]
    [InlineData("PLU-1", FindingKinds.WaterLoss, "2026-01-01", "2026-05-13")]
    [InlineData("LAN-1", FindingKinds.WaterLoss, "2026-06-09", "2026-06-09")]
    [InlineData("JOR-1", FindingKinds.MakeUpChanged, "2026-04-02", "2026-04-03")]
    [InlineData("WRE-1", FindingKinds.DoseUntreated, "2025-12-02", "2025-12-29")]
    [InlineData("WRE-1", FindingKinds.DosePlanClash, "2025-12-02", "2025-12-29")]
    [InlineData("HOB-1", FindingKinds.RestartUnproved, "2026-05-04", "2026-05-18")]
    [InlineData("TOL-1", FindingKinds.HoldTooLong, "2025-07-02", "2025-07-16")]
    public void Story_IsAHeadlineInTime(string site, string kind, string onset, string latest)
    {
        var first = Headlines(site).Where(h => h.Kind == kind).Min(h => (DateOnly?)h.On);

        Assert.NotNull(first);
        Assert.InRange(first.Value, DateOnly.ParseExact(onset, "yyyy-MM-dd"), DateOnly.ParseExact(latest, "yyyy-MM-dd"));
    }

    [Fact]
    public void Leak_IsNotCalledLowCyclesWhileTheControllerHidesIt() =>
        Assert.DoesNotContain(Headlines("PLU-1"), h => h.Kind == FindingKinds.CyclesLow && h.On >= new DateOnly(2026, 1, 1) && h.On <= new DateOnly(2026, 5, 13));

    [Theory]
    [InlineData("GRO-1")]
    [InlineData("UMB-1")]
    public void StuckMeterAndReset_AreNotCalledALossOfWaterOrAnotherMakeUp(string site) =>
        Assert.DoesNotContain(Headlines(site), h => h.Kind is FindingKinds.WaterLoss or FindingKinds.MakeUpChanged);

    [Fact]
    public void Control_CollectsNoHeadlineOfWaterAndPlan() =>
        Assert.DoesNotContain(Headlines("YAF-1"), h => WaterAndPlan.Contains(h.Kind));

    private IEnumerable<(string Kind, DateOnly On)> Headlines(string site)
    {
        var document = fixture.Firm.Document;
        var history = SystemHistory.From(new FirmSetUp(document), site, "CT-1", document.Visits);
        return Assessment.Of(history, AsOf).Findings.SelectMany(finding => finding.Course
            .Where(step => step.Severity >= Severity.Plan)
            .Select(step => (finding.In(Language.English).Kind, step.On)));
    }
}
