using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class MicrobiologyHighTests
{
    private static readonly Rule Legionella = new()
    {
        Code = "OXT-LEG",
        Name = "Oxterhelm Code, Legionella",
        Jurisdiction = "Oxterhelm",
        From = new DateOnly(2024, 7, 1),
        Test = TestCodes.Legionella,
        EveryDays = 90,
        Bands =
        [
            new RuleBand { From = 20, Unit = "[CFU]/mL", Severity = Severity.Plan, Says = "disinfect, retest in 3 to 7 days" },
            new RuleBand { From = 1000, Unit = "[CFU]/mL", Severity = Severity.Act, Says = "notify within 24 h of receipt" },
        ],
    };

    [Theory]
    [InlineData(9_000, null)]
    [InlineData(10_000, Severity.Plan)]
    [InlineData(100_000, Severity.Act)]
    public void DipSlide_WithoutARule_IsJudgedByFixedLimits(double count, Severity? expected) =>
        Assert.Equal(expected, Assess(TestCodes.DipSlide, count, "[CFU]/mL").Open(FindingKinds.MicrobiologyHigh)?.Severity);

    [Fact]
    public void Legionella_InAnotherUnit_IsTheSameWater()
    {
        // 20 CFU/mL = 20,000 CFU/L: on the band of the rule; 19,000 CFU/L is below it.
        Assert.Equal(Severity.Plan, Assess(TestCodes.Legionella, 20_000, "[CFU]/L", Legionella).Open(FindingKinds.MicrobiologyHigh)!.Severity);
        Assert.Null(Assess(TestCodes.Legionella, 19_000, "[CFU]/L", Legionella).Open(FindingKinds.MicrobiologyHigh));
    }

    [Fact]
    public void Legionella_WithoutARule_IsNotJudged() => Assert.Empty(Assess(TestCodes.Legionella, 5_000, "[CFU]/mL").All(FindingKinds.MicrobiologyHigh));

    [Fact]
    public void Legionella_NotQuantifiable_IsNoNumber() =>
        Assert.Empty(Assess(reading => reading with { Value = null, NotQuantifiable = true }, TestCodes.Legionella, 0, "[CFU]/mL", Legionella).All(FindingKinds.MicrobiologyHigh));

    [Fact]
    public void Legionella_BelowADetectionLimitAboveTheBand_IsNotJudged()
    {
        var assessment = Assess(reading => reading with { Qualifier = "<" }, TestCodes.Legionella, 100, "[CFU]/mL", Legionella);

        Assert.Empty(assessment.All(FindingKinds.MicrobiologyHigh));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.MicrobiologyHigh);
    }

    [Fact]
    public void Legionella_ByTheVersionInForceOnTheDayOfTheSample()
    {
        var stricter = Legionella with { From = new DateOnly(2025, 3, 1), Bands = [new RuleBand { From = 10, Unit = "[CFU]/mL", Severity = Severity.Act }] };
        var builder = new HistoryBuilder { Rules = [Legionella, stricter] };
        builder.Visit(0, Reading(TestCodes.Legionella, 15, "[CFU]/mL"));
        Assert.Empty(builder.Assess().All(FindingKinds.MicrobiologyHigh));

        builder.Visit(56, Reading(TestCodes.Legionella, 15, "[CFU]/mL"));

        Assert.Equal(Severity.Act, builder.Assess().Open(FindingKinds.MicrobiologyHigh)!.Severity);
    }

    [Fact]
    public void LateResult_OfAnEarlierVisit_IsFirstSeenWhenItCameIn()
    {
        var builder = new HistoryBuilder { Rules = [Legionella] };
        builder.Visit(0, record => record with
        {
            Readings = [HistoryBuilder.Tower(TestCodes.Legionella, 300, "[CFU]/mL") with { ResultAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(10)) }],
        }).Visit(7);

        Assert.Empty(builder.Assess(HistoryBuilder.Start.AddDays(9)).All(FindingKinds.MicrobiologyHigh));
        var finding = builder.Assess(HistoryBuilder.Start.AddDays(11)).Open(FindingKinds.MicrobiologyHigh)!;
        Assert.Equal(new DateOnly(2025, 1, 16), finding.FirstSeen);
        Assert.Equal(builder.IdOf(0), finding.FirstVisit);
        Assert.Contains("disinfect, retest in 3 to 7 days", finding.Text, StringComparison.Ordinal);
    }

    private static SystemAssessment Assess(string test, double value, string unit, params Rule[] rules) => Assess(reading => reading, test, value, unit, rules);

    private static SystemAssessment Assess(Func<Reading, Reading> change, string test, double value, string unit, params Rule[] rules) =>
        new HistoryBuilder { Rules = rules }.Visit(0).Visit(28, record => record with { Readings = [change(HistoryBuilder.Tower(test, value, unit))] }).Assess();

    private static Func<VisitedSystem, VisitedSystem> Reading(string test, double value, string unit) => record => record with { Readings = [HistoryBuilder.Tower(test, value, unit)] };
}
