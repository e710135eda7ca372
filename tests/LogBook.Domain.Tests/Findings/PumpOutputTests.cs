using LogBook.Domain.Findings;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class PumpOutputTests
{
    // 0.3 h a day at 1.283 L/h is 0.3849 L a day, what the builder's drum loses.
    [Fact]
    public void Judge_AsRated_IsNoFinding() => Assert.Empty(new HistoryBuilder().Every(28, 14).Assess().All(FindingKinds.PumpOutput));

    [Fact]
    public void Judge_SlowWear_IsFoundAndStaysOpen()
    {
        // Full output for six visits, then down to a quarter within ten: the drum is far more telling than any single visit.
        var builder = new HistoryBuilder { VisitEveryDays = 28 }.Every(28, 12);
        for (var i = 1; i <= 10; i++)
        {
            builder.InhibitorPerDayL = 0.3849 * (1 - (0.07 * i));
            builder.Visit((11 + i) * 28);
        }

        var all = builder.Assess().All(FindingKinds.PumpOutput);

        var finding = Assert.Single(all);
        Assert.Equal(FindingState.Open, finding.State);
        Assert.Equal(Severity.Plan, finding.Severity);
        Assert.Equal(("P-INH", "D-INH"), (finding.About!.Pump, finding.About.Drum));

        // -25 % is reached between the fifth and sixth visit of the wear by the mean of 56 days.
        Assert.InRange(finding.FirstSeen, HistoryBuilderDay(15), HistoryBuilderDay(18));
    }

    [Fact]
    public void Judge_HalfTheOutput_IsWatchThenPlanAndFoldsTheFeed()
    {
        var builder = new HistoryBuilder().Every(28, 12);
        builder.InhibitorPerDayL = 0.6 * 0.3849;
        builder.Visit(12 * 28).Visit(13 * 28).Visit(14 * 28);
        var assessment = builder.Assess();

        Assert.Equal(Severity.Plan, assessment.Open(FindingKinds.PumpOutput)!.Severity);
        Assert.Equal(Severity.Watch, assessment.Open(FindingKinds.FeedLow)!.Severity);
    }

    [Fact]
    public void Judge_NothingDrawn_IsAct()
    {
        var builder = new HistoryBuilder().Every(28, 8);
        builder.InhibitorPerDayL = 0;

        Assert.Equal(Severity.Act, builder.Visit(8 * 28).Visit(9 * 28).Assess().Open(FindingKinds.PumpOutput)!.Severity);
    }

    [Fact]
    public void Judge_StrokeMoved_StartsAnew()
    {
        // Half the stroke, half the output, twice the hours would be right: the builder's hours stay, so only the rating could complain.
        var builder = new HistoryBuilder { System = system => system with { Pumps = [system.Pumps[0] with { RatedLPerH = null }] } }.Every(28, 10);
        builder.InhibitorPerDayL = 0.19;
        builder.Visit(280, record => record with { Pumps = [new PumpReading { Pump = "P-INH", StrokeFound = 60, StrokeLeft = 30 }] });
        Assert.DoesNotContain(builder.Visit(308).Visit(336).Visit(364).Assess().All(FindingKinds.PumpOutput), f => f.FirstSeen > HistoryBuilderDay(10));
    }

    [Fact]
    public void Judge_PumpRenewed_ClosesByTheNewPumpsOwnOutput()
    {
        var builder = new HistoryBuilder().Every(28, 10);
        builder.InhibitorPerDayL = 0.4 * 0.3849;
        builder.Visit(280).Visit(308).Visit(336, record => record with { Events = [new VisitEvent { Type = EventType.PumpRenewed, Of = "P-INH" }] });
        Assert.NotNull(builder.Assess().Open(FindingKinds.PumpOutput));

        builder.InhibitorPerDayL = 0.3849;
        Assert.Null(builder.Visit(364).Visit(392).Visit(420).Assess().Open(FindingKinds.PumpOutput));
    }

    [Fact]
    public void Judge_FirstDrawdownOfAMillilitre_IsNoMeasureForTheDrum()
    {
        // One millilitre in 60 s, read to a whole one: 0.06 ± 0.03 L/h cannot say that 0.128 L/h is twice too much.
        var builder = new HistoryBuilder { InhibitorPerDayL = 0.0385, System = system => system with { Pumps = [system.Pumps[0] with { RatedLPerH = null }] } };
        builder.Visit(0, record => record with { Drawdowns = [new Drawdown { Pump = "P-INH", Millilitres = 1, Seconds = 60 }] });
        for (var i = 1; i < 20; i++)
        {
            builder.Visit(28 * i);
        }

        Assert.Empty(builder.Assess().All(FindingKinds.PumpOutput));
    }

    [Fact]
    public void Judge_DrumAtItsHeel_IsNotJudged()
    {
        VisitedSystem Empty(VisitedSystem record) => record with { Drums = [new DrumReading { Drum = "D-INH", Level = 2 / 60.0 * 62, Unit = "cm" }] };
        var assessment = new HistoryBuilder().Every(28, 8).Visit(224, Empty).Assess();

        Assert.Empty(assessment.All(FindingKinds.PumpOutput));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.PumpOutput && n.Why.Code == "drum-empty");
    }

    [Theory]
    [InlineData(0.95, false)]
    [InlineData(0.86, false)]
    [InlineData(0.80, true)]
    public void Judge_DrawdownAgainstTheFirst_FifteenPercent(double share, bool expected)
    {
        VisitedSystem Column(VisitedSystem record, double of) => record with { Drawdowns = [new Drawdown { Pump = "P-INH", Millilitres = 1283 / 60.0 * of, Seconds = 60 }] };
        var assessment = new HistoryBuilder().Visit(0, r => Column(r, 1)).Visit(28, r => Column(r, share)).Assess();

        Assert.Equal(expected, assessment.All(FindingKinds.PumpOutput).Count == 1);
    }

    [Fact]
    public void Judge_WithoutHours_SaysNothing()
    {
        var builder = new HistoryBuilder { InhibitorPerDayL = 0.1 };
        for (var i = 0; i < 8; i++)
        {
            builder.Visit(28 * i, record => record with { HoursRun = [record.HoursRun[0]] });
        }

        Assert.Empty(builder.Assess().All(FindingKinds.PumpOutput));
    }

    private static DateOnly HistoryBuilderDay(int visit) => DateOnly.FromDateTime(HistoryBuilder.Start).AddDays(28 * visit);
}
