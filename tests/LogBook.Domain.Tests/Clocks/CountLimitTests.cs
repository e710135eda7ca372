using CsCheck;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Clocks;

public class CountLimitTests
{
    private static readonly DateOnly Day = new(2025, 2, 3);
    private static readonly string[] Counts = [TestCodes.DipSlide, TestCodes.ColonyCount, TestCodes.Legionella];

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
    [InlineData(19_000, null)]
    [InlineData(20_000, Severity.Plan)]
    [InlineData(1_000_000, Severity.Act)]
    public void ReachedBy_Legionella_IsTheBandOfTheRuleInForce_WhateverTheUnit(double perLitre, Severity? expected)
    {
        // 20 CFU/mL = 20,000 CFU/L.
        var reached = Reached([Legionella], HistoryBuilder.Tower(TestCodes.Legionella, perLitre, "[CFU]/L"));

        Assert.Equal(expected, reached?.Severity);
        Assert.Equal(expected is null ? null : Legionella, reached?.Rule);
    }

    [Fact]
    public void ReachedBy_BeforeTheRuleBegan_IsNone() =>
        Assert.Null(Reached([Legionella], HistoryBuilder.Tower(TestCodes.Legionella, 5_000, "[CFU]/mL"), day: Legionella.From.AddDays(-1)));

    [Theory]
    [InlineData(9_999, null)]
    [InlineData(10_000, Severity.Plan)]
    [InlineData(100_000, Severity.Act)]
    public void ReachedBy_DipSlideWithoutARule_IsTheFixedLimit(double count, Severity? expected) =>
        Assert.Equal(expected, Reached([], HistoryBuilder.Tower(TestCodes.DipSlide, count, "[CFU]/mL"))?.Severity);

    [Fact]
    public void ReachedBy_RangeOfTheProgramme_TakesThePlaceOfTheFixedLimit()
    {
        var programme = new Programme { From = Day, Ranges = [new TestRange { At = SamplePoints.Tower, Test = TestCodes.DipSlide, High = 1_000_000, Unit = "[CFU]/mL" }] };

        Assert.Null(Reached([], HistoryBuilder.Tower(TestCodes.DipSlide, 100_000, "[CFU]/mL"), programme));
        Assert.Equal(1_000_000, Reached([], HistoryBuilder.Tower(TestCodes.DipSlide, 2_000_000, "[CFU]/mL"), programme)?.From);
    }

    [Fact]
    public void ReachedBy_NoNumberOrAnotherTest_IsNone()
    {
        var slide = HistoryBuilder.Tower(TestCodes.DipSlide, 100_000, "[CFU]/mL");

        Assert.Null(Reached([], slide with { Qualifier = "<" }));
        Assert.Null(Reached([], slide with { Value = null, NotQuantifiable = true }));
        Assert.Null(Reached([], slide with { Value = null, NotTaken = SystemVisit.ResultPending }));
        Assert.Null(Reached([], slide with { Test = TestCodes.Chloride }));
    }

    /// <summary>The form asks about exactly those counts that become a finding.</summary>
    [Fact]
    public void ReachedBy_AnyCount_AsksWhereTheFindingDoes() =>
        Gen.Select(Gen.Double[0, 7], Gen.Int[0, 2].Select(at => Counts[at]), Gen.Bool).Sample(
            (decades, test, ruled) =>
            {
                var reading = HistoryBuilder.Tower(test, Math.Round(Math.Pow(10, decades)), "[CFU]/mL");
                IReadOnlyList<Rule> rules = ruled ? [Legionella] : [];
                var found = new HistoryBuilder { Rules = rules }.Visit(0).Visit(28, record => record with { Readings = [reading] }).Assess().Open(FindingKinds.MicrobiologyHigh);

                Assert.Equal(found?.Severity, Reached(rules, reading)?.Severity);
            },
            iter: 60);

    private static CountLimit? Reached(IReadOnlyList<Rule> rules, Reading reading, Programme? programme = null, DateOnly? day = null)
    {
        var document = new HistoryBuilder { Rules = rules }.Document();
        var firm = new FirmSetUp(document);
        return CountLimit.ReachedBy(firm, firm.System("YAF-1", "CT-1")!, programme, reading, day ?? Day);
    }
}
