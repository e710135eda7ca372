using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class MixingHazardTests
{
    [Fact]
    public void Judge_NothingOdd_IsNoFinding() => Assert.Empty(new DosedTower().Weeks(3).Assess().All(FindingKinds.MixingHazard));

    [Fact]
    public void Judge_ProductInAnothersDrum_IsActAndClosesWhenPutRight()
    {
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, Labelled("N-15"));
        Assert.Equal(Severity.Act, builder.Assess().Open(FindingKinds.MixingHazard)!.Severity);

        builder.Visit(84, Labelled("P-40"));
        Assert.Null(builder.Assess().Open(FindingKinds.MixingHazard));
    }

    [Fact]
    public void Judge_PouredIntoAnothersDrum_IsFound() => Assert.Single(new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Additions = [new Addition { Product = "A-38", Amount = 5, Unit = "L", To = "D-INH" }] })
        .Assess().All(FindingKinds.MixingHazard));

    [Theory]
    [InlineData("basin", "basin", true)]
    [InlineData("basin", "strainer", false)]
    public void Judge_AcidAndHypochloritePoured_OnlyAtOnePlace(string first, string second, bool expected)
    {
        var assessment = new HistoryBuilder().Every(28, 2)
            .Visit(56, record => record with { Additions = [new Addition { Product = "A-38", Amount = 1, Unit = "L", To = first }, new Addition { Product = "H-12", Amount = 1, Unit = "L", To = second }] })
            .Assess();

        Assert.Equal(expected, assessment.All(FindingKinds.MixingHazard).Count == 1);
    }

    [Fact]
    public void Judge_InhibitorAndBiocidePoured_IsNoFinding() => Assert.Empty(new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Additions = [new Addition { Product = "P-40", Amount = 1, Unit = "L", To = "basin" }, new Addition { Product = "N-15", Amount = 1, Unit = "L", To = "basin" }] })
        .Assess().All(FindingKinds.MixingHazard));

    [Fact]
    public void Judge_AcidAndHypochloriteOnOneOutput_IsFound()
    {
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with { Feeds = [new Feed { Drum = "D-A", Output = "x", Mode = FeedMode.ByPh }, new Feed { Drum = "D-H", Output = "x", Mode = FeedMode.ByOrp }] },
            System = WithAcidAndHypochlorite,
        };

        Assert.Equal("x", builder.Every(28, 2).Assess().Open(FindingKinds.MixingHazard)!.About!.Output);
    }

    [Fact]
    public void Judge_AcidAndHypochloriteByTheirOwnOutputs_IsNoFinding()
    {
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with { Feeds = [new Feed { Drum = "D-A", Output = "x", Mode = FeedMode.ByPh }, new Feed { Drum = "D-H", Output = "y", Mode = FeedMode.ByOrp }] },
            System = WithAcidAndHypochlorite,
        };

        Assert.Empty(builder.Every(28, 2).Assess().All(FindingKinds.MixingHazard));
    }

    [Fact]
    public void Judge_ForcedOnWithoutFlow_IsFoundForReactiveProductsOnly()
    {
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with { Feeds = [.. programme.Feeds, new Feed { Drum = "D-A", Output = "x", Mode = FeedMode.ByPh }] },
            System = WithAcidAndHypochlorite,
        };
        VisitedSystem Forced(VisitedSystem record, string output) => record with { Running = false, Switches = [new SwitchReading { Output = output, Found = SwitchPosition.ForcedOn, Left = SwitchPosition.Automatic }] };

        Assert.Single(builder.Every(28, 2).Visit(56, r => Forced(r, "x")).Assess().All(FindingKinds.MixingHazard));
        Assert.Empty(new HistoryBuilder().Every(28, 2).Visit(56, r => Forced(r, "inhibitor")).Assess().All(FindingKinds.MixingHazard));
    }

    private static Func<VisitedSystem, VisitedSystem> Labelled(string product) => record => record with { Drums = [record.Drums[0] with { ProductFound = product }] };

    private static WaterSystem WithAcidAndHypochlorite(WaterSystem system) => system with
    {
        Outputs = [.. system.Outputs, new Output { Code = "x", Drives = OutputDrives.Feed }, new Output { Code = "y", Drives = OutputDrives.Feed }],
        Drums =
        [
            .. system.Drums,
            new Drum { Code = "D-A", Product = "A-38", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 },
            new Drum { Code = "D-H", Product = "H-12", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 },
        ],
    };
}
