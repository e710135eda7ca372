using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;

namespace LogBook.Domain.Tests.Findings;

public class BiocideLapseTests
{
    [Fact]
    public void Judge_DosesRan_IsNoFinding() => Assert.Empty(new DosedTower().Weeks(12).Assess().All(FindingKinds.BiocideLapse));

    [Fact]
    public void Judge_NothingRanForAWeek_IsActAndCountsFromTheLastDosePossible()
    {
        var finding = new DosedTower().Weeks(5).Weeks(1, doses: 0).Assess().Open(FindingKinds.BiocideLapse)!;

        // Last dose possible: Friday 31 January 21:30; visit Monday 10 February 09:00: 9.48 days.
        Assert.Equal(Severity.Act, finding.Severity);
        Assert.Equal(9.48, finding.Evidence[0].Value!.Value, 0.01);
    }

    [Fact]
    public void Judge_DrumRanEmpty_CountsTheDosesItWasEnoughFor()
    {
        // Hours went on, the drum was left at its heel a week ago: none of the two doses held product.
        var finding = new DosedTower().Weeks(5).EmptyDrum().Weeks(2).Assess().Open(FindingKinds.BiocideLapse)!;

        Assert.Equal(Severity.Act, finding.Severity);
        Assert.Contains("empty", finding.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Judge_OneDoseRan_IsNoFinding() =>
        Assert.Empty(new DosedTower().Weeks(5).Weeks(2, doses: 1).Assess().All(FindingKinds.BiocideLapse));

    [Fact]
    public void Judge_AnotherBiocideOfWhichNothingIsKnown_IsNotJudged()
    {
        var tower = new DosedTower
        {
            Change = programme => programme with { Feeds = [.. programme.Feeds, new Feed { Drum = "D-OX", Mode = FeedMode.ByOrp, SetPoint = 650, Unit = "mV" }] },
            System = system => system with { Drums = [.. system.Drums, new Domain.Sites.Drum { Code = "D-OX", Product = "H-12", Shape = Domain.Sites.DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 }] },
        };
        var assessment = tower.Weeks(5).Weeks(1, doses: 0).Assess();

        Assert.Empty(assessment.All(FindingKinds.BiocideLapse));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.BiocideLapse);
    }

    [Fact]
    public void Judge_OxidantWithResidual_IsNoFinding()
    {
        var tower = new DosedTower
        {
            Change = programme => programme with { Feeds = [.. programme.Feeds, new Feed { Drum = "D-OX", Mode = FeedMode.ByOrp, SetPoint = 650, Unit = "mV" }] },
            System = system => system with { Drums = [.. system.Drums, new Domain.Sites.Drum { Code = "D-OX", Product = "H-12", Shape = Domain.Sites.DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 }] },
        };
        var with = tower.Weeks(5).Weeks(1, doses: 0, change: record => record with { Readings = [.. record.Readings, HistoryBuilder.Tower(TestCodes.FreeHalogen, 0.4, "mg/L")] }).Assess();

        Assert.Empty(with.All(FindingKinds.BiocideLapse));
    }

    [Fact]
    public void Judge_Idle_IsNotJudged() =>
        Assert.Empty(new DosedTower().Weeks(5).Weeks(1, doses: 0, change: record => record with { InUse = false }).Assess().All(FindingKinds.BiocideLapse));

    [Fact]
    public void Judge_NoBiocideInTheProgramme_SaysNothing() => Assert.Empty(new HistoryBuilder().Every(28, 4).Assess().All(FindingKinds.BiocideLapse));
}
