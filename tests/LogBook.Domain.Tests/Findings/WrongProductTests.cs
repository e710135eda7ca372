using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class WrongProductTests
{
    [Fact]
    public void Judge_LabelOfAnotherProduct_IsActAtOnce()
    {
        var finding = new HistoryBuilder().Every(28, 2)
            .Visit(56, record => record with { Drums = [record.Drums[0] with { ProductFound = "N-15" }] })
            .Assess().Open(FindingKinds.WrongProduct)!;

        Assert.Equal(Severity.Act, finding.Severity);
        Assert.Contains("Biocide N-15", finding.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("P-40")]
    [InlineData("p-40")]
    public void Judge_RightLabel_IsNoFinding(string label) => Assert.Empty(new HistoryBuilder().Every(28, 2)
        .Visit(56, record => record with { Drums = [record.Drums[0] with { ProductFound = label }] })
        .Assess().All(FindingKinds.WrongProduct));

    [Fact]
    public void Judge_LevelFallsButNoResidual_IsWatchThenAct()
    {
        var builder = new HistoryBuilder().Every(28, 4).Visit(112, Residual(0));
        var once = builder.Assess().Open(FindingKinds.WrongProduct)!;
        var twice = builder.Visit(140, Residual(0)).Assess().Open(FindingKinds.WrongProduct)!;

        Assert.Equal((Severity.Watch, Severity.Act), (once.Severity, twice.Severity));

        Assert.Contains("the inhibitor test shows", twice.Text, StringComparison.Ordinal);

        // 100 mg/L by what left the drum, as the builder feeds it.
        Assert.Equal(100, twice.Evidence[1].Value!.Value, 5.0);
    }

    [Fact]
    public void Judge_LevelStandsStill_IsAnotherMatter() =>
        Assert.Empty(new HistoryBuilder { InhibitorPerDayL = 0.02, Inhibitor = 0 }.Every(28, 5).Assess().All(FindingKinds.WrongProduct));

    [Fact]
    public void Judge_DrumRanEmpty_IsAnotherMatter()
    {
        VisitedSystem Empty(VisitedSystem record) => Residual(0)(record) with { Drums = [new DrumReading { Drum = "D-INH", Level = 2 / 60.0 * 62, Unit = "cm" }] };

        Assert.Empty(new HistoryBuilder().Every(28, 4).Visit(112, Empty).Assess().All(FindingKinds.WrongProduct));
    }

    [Fact]
    public void Judge_ThirtyPercentOfTheBalance_IsNoFinding() =>
        Assert.Empty(new HistoryBuilder().Every(28, 4).Visit(112, Residual(30)).Visit(140, Residual(30)).Assess().All(FindingKinds.WrongProduct));

    [Fact]
    public void Judge_WithoutResidualTest_IsNotJudged()
    {
        var assessment = new HistoryBuilder().Every(28, 4).Visit(112, record => record with { Readings = [] }).Assess();

        Assert.Empty(assessment.All(FindingKinds.WrongProduct));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.WrongProduct);
    }

    private static Func<VisitedSystem, VisitedSystem> Residual(double value) => record => record with
    {
        Readings = [.. record.Readings.Where(r => r.Test != TestCodes.Inhibitor), HistoryBuilder.Tower(TestCodes.Inhibitor, value, "mg/L")],
    };
}
