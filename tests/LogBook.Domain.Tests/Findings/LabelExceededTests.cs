using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class LabelExceededTests
{
    // 0.95 L x 1.05 kg/L in 0.8 x 10 m3 = 124.7 mg/L a dose, 249.4 a week.
    [Theory]
    [InlineData(125, 300, 24, false)]
    [InlineData(124, 300, 24, true)]
    [InlineData(150, 250, 24, false)]
    [InlineData(150, 249, 24, true)]
    [InlineData(150, 300, 72, false)]
    [InlineData(150, 300, 73, true)]
    public void Judge_Plan_ComparesDoseWeekAndGapWithTheVolumeAtItsLowEnd(double dose, double week, double gap, bool expected)
    {
        var finding = Findings(new DosedTower().Weeks(3), dose, week, gap);

        Assert.Equal(expected, finding.Count == 1);
        Assert.All(finding, f => Assert.Equal(Severity.Act, f.Severity));
    }

    [Fact]
    public void Judge_SettingFoundLonger_IsFoundAndClosesWhenReadRight()
    {
        VisitedSystem Read(VisitedSystem record, double found) => record with { Settings = [.. record.Settings, new SettingReading { Name = "biocide-1/runMinutes", Found = SettingValue.Of(found), Left = SettingValue.Of(19) }] };
        var found = Findings(new DosedTower().Weeks(3).Weeks(1, change: r => Read(r, 30)), 150, 300, 24);
        var closed = Findings(new DosedTower().Weeks(3).Weeks(1, change: r => Read(r, 30)).Weeks(1, change: r => Read(r, 19)), 150, 300, 24);

        // 30 min: 196.9 mg/L.
        Assert.Equal(FindingState.Open, Assert.Single(found).State);
        Assert.Equal(196.9, found[0].Evidence[0].Value!.Value, 0.1);
        Assert.Equal(FindingState.Closed, Assert.Single(closed).State);
    }

    [Fact]
    public void Judge_PouredBesideThePlan_AddsToTheWeekAndTheGap()
    {
        VisitedSystem Pour(VisitedSystem record) => record with { Additions = [new Addition { Product = "N-15", Amount = 1, Unit = "L", To = "basin", At = Moment.OfUtc(new DateTime(2025, 1, 25, 9, 0, 0, DateTimeKind.Utc)) }] };
        var finding = Assert.Single(Findings(new DosedTower().Weeks(3).Weeks(1, change: Pour), 150, 300, 24));

        // Saturday 09:00 after the dose of Friday 21:30: 11.5 h; the week holds 0.95 + 0.95 + 1 L = 380.6 mg/L.
        Assert.Contains(finding.Evidence, e => e.Unit == "h" && Math.Abs(e.Value!.Value - 11.5) < 0.01);
        Assert.Contains(finding.Evidence, e => e.Unit == "mg/L" && Math.Abs(e.Value!.Value - 380.6) < 0.1);
    }

    [Fact]
    public void Judge_DrumLostMoreThanAWeekAllows_IsFound()
    {
        // 8 L in a week less 2 u of two dips (1.77 L): 6.2 L = 818 mg/L.
        var finding = Assert.Single(Findings(new DosedTower().Weeks(3).Weeks(1, litres: 8), 150, 300, 24));

        Assert.Equal(818, finding.Evidence[0].Value!.Value, 3.0);
    }

    [Fact]
    public void Judge_ClocksMoveForward_WeekStaysAWeek() =>
        Assert.Empty(Findings(new DosedTower().Weeks(14), 150, 300, 24));

    [Fact]
    public void Judge_NoVolumeOnFile_IsNotJudged()
    {
        var tower = new DosedTower { System = system => system with { VolumeL = null } }.Weeks(3);

        Assert.Empty(Findings(tower, 100, 300, 24));
    }

    [Fact]
    public void Judge_NoLabelOnFile_SaysNothing() => Assert.Empty(new DosedTower().Weeks(3).Assess().All(FindingKinds.LabelExceeded));

    private static IReadOnlyList<Finding> Findings(DosedTower tower, double dose, double week, double gap)
    {
        var document = tower.Builder.Document();
        document = document with { Products = [.. document.Products.Select(p => p.Code == "N-15" ? p with { LabelMaxMgPerL = dose, LabelMaxWeekMgPerL = week, LabelGapHours = gap } : p)] };
        var history = SystemHistory.From(new FirmSetUp(document), "YAF-1", "CT-1", tower.Builder.Visits);
        return Domain.Assessments.Assessment.Of(history, tower.Builder.Visits[^1].Left!.Value.Utc.AddHours(1)).All(FindingKinds.LabelExceeded);
    }
}
