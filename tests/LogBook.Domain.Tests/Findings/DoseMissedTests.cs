using LogBook.Domain.Findings;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class DoseMissedTests
{
    [Fact]
    public void Judge_DosesRan_IsNoFinding() => Assert.Empty(new DosedTower().Weeks(10).Assess().All(FindingKinds.DoseMissed));

    [Fact]
    public void Judge_NoneOfTwo_IsPlanAtOnceWithTheNumbers()
    {
        var finding = new DosedTower().Weeks(5).Weeks(1, doses: 0).Assess().Open(FindingKinds.DoseMissed)!;

        // BiocideLapse is the headline above it: nothing else kills here, and ten days have passed since the last dose.
        Assert.Equal("D-B1", finding.About!.Drum);
        Assert.Equal(0, finding.Evidence[0].Value!.Value, 1e-9);
        Assert.Equal(60, finding.Evidence[0].LimitLow);
        Assert.Contains("0 of 2", finding.Text, StringComparison.Ordinal);
        Assert.Equal(Severity.Watch, finding.Severity);
    }

    [Fact]
    public void Judge_OneOfTwoAgain_IsWatchThenPlan()
    {
        var once = new DosedTower().Weeks(5).Weeks(1, doses: 1).Assess().Open(FindingKinds.DoseMissed)!;
        var twice = new DosedTower().Weeks(5).Weeks(2, doses: 1).Assess().Open(FindingKinds.DoseMissed)!;

        Assert.Equal(50, once.Evidence[0].Value!.Value, 6.0);
        Assert.Equal((Severity.Watch, Severity.Plan), (once.Severity, twice.Severity));
    }

    [Fact]
    public void Judge_HoursShortButDrumWentDown_IsNoFinding() =>
        Assert.Empty(new DosedTower().Weeks(5).Weeks(1, doses: 0, litres: 3.5).Assess().All(FindingKinds.DoseMissed));

    [Fact]
    public void Judge_AgreedOff_IsNotJudged()
    {
        VisitedSystem Off(VisitedSystem record) => record with { Switches = [.. record.Switches, new SwitchReading { Output = "biocide-1", Found = SwitchPosition.ForcedOff, Left = SwitchPosition.ForcedOff, Reason = "trial without it, agreed" }] };
        var assessment = new DosedTower().Weeks(4).Weeks(1, change: Off).Weeks(1, doses: 0, change: Off).Assess();

        Assert.Empty(assessment.All(FindingKinds.DoseMissed));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.DoseMissed && n.Why.Code == "agreed-off");
    }

    [Fact]
    public void Judge_IdlePlant_IsNotJudged()
    {
        var assessment = new DosedTower().Weeks(5).Weeks(1, doses: 0, change: record => record with { Running = false }).Assess();

        Assert.Empty(assessment.All(FindingKinds.DoseMissed));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.DoseMissed);
    }

    [Fact]
    public void Judge_KnownStop_ExpectsNothing()
    {
        // Weeks end on Mondays 6, 13, 20, 27 January, 3 and 10 February; the sixth visit closes the week of the stop.
        var tower = new DosedTower { System = system => system with { Operation = new Operation { Stops = [new Stop { From = new DateOnly(2025, 2, 3), To = new DateOnly(2025, 2, 9) }] } } };

        Assert.Empty(tower.Weeks(5).Weeks(1, doses: 0).Assess().All(FindingKinds.DoseMissed));
    }

    [Fact]
    public void Judge_WithoutDrumReading_HoursAloneAreWatchUntilConfirmed()
    {
        VisitedSystem NoDrum(VisitedSystem record) => record with { Drums = [record.Drums[0]] };
        var once = new DosedTower().Weeks(5, change: NoDrum).Weeks(1, doses: 0, change: NoDrum).Assess().Open(FindingKinds.DoseMissed)!;

        Assert.Equal(Severity.Watch, once.Severity);
    }
}
