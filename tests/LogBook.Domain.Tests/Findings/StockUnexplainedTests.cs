using LogBook.Domain.Findings;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class StockUnexplainedTests
{
    // Dips of 1 cm: 2 u of two levels is 2.74 L; 3 % of 60 L is 1.8 L. The pump may have drawn 8.4 h x 1.283 L/h = 10.8 L.
    [Theory]
    [InlineData(34.0, 38.0, Severity.Watch)]
    [InlineData(34.0, 36.5, null)]
    public void Judge_Rise_BeyondTwoLevels(double first, double last, Severity? expected)
    {
        var assessment = At(first, last).Assess();

        Assert.Equal(expected, assessment.Open(FindingKinds.StockUnexplained)?.Severity);
    }

    [Fact]
    public void Judge_RiseByADelivery_IsNoFinding() => Assert.Empty(At(34, 50, added: 27).Assess().All(FindingKinds.StockUnexplained));

    [Theory]
    [InlineData(50.0, 39.0, null)]
    [InlineData(50.0, 33.0, Severity.Watch)]
    [InlineData(50.0, 20.0, Severity.Act)]
    public void Judge_Fall_BeyondWhatThePumpCanHaveDrawn(double first, double last, Severity? expected) =>
        Assert.Equal(expected, At(first, last).Assess().Open(FindingKinds.StockUnexplained)?.Severity);

    [Fact]
    public void Judge_FallByHand_IsNoFinding() => Assert.Empty(
        At(50, 33, change: record => record with { Additions = [new Addition { Product = "P-40", Amount = 6, Unit = "L", To = "basin" }] }).Assess().All(FindingKinds.StockUnexplained));

    [Fact]
    public void Judge_FallWithoutHours_IsNotJudged()
    {
        var assessment = At(50, 20, change: record => record with { HoursRun = [] }, then: record => record with { HoursRun = [] }).Assess();

        Assert.Empty(assessment.All(FindingKinds.StockUnexplained));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.StockUnexplained);
    }

    [Fact]
    public void Judge_ExchangeOfUnknownLevel_IsNotJudged() => Assert.Empty(
        At(30, 58, change: record => record with { Drums = [record.Drums[0] with { Swapped = true }] }).Assess().All(FindingKinds.StockUnexplained));

    private static HistoryBuilder At(double first, double last, double added = 0, Func<VisitedSystem, VisitedSystem>? change = null, Func<VisitedSystem, VisitedSystem>? then = null) =>
        new HistoryBuilder { RefillAtL = 0 }
            .Visit(0, record => (change ?? (r => r))(Level(record, first, added)))
            .Visit(28, record => (then ?? (r => r))(Level(record, last, 0)));

    private static VisitedSystem Level(VisitedSystem record, double litres, double added) =>
        record with { Drums = [new DrumReading { Drum = "D-INH", Level = litres / 60 * 62, Unit = "cm", AddedL = added }] };
}
