using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Findings;

public class ProductRulesTests
{
    [Fact]
    public void FeedLow_FortyPercentOfExpected_IsPlanWithTheNumbers()
    {
        var expectedPerDay = 100 * 19_400 / 4.5 / 1e6 / 1.12;
        var finding = new HistoryBuilder { InhibitorPerDayL = 0.4 * expectedPerDay, System = WithoutPumps }.Every(28, 3).Assess().Open(FindingKinds.FeedLow);

        // One level: 1 cm of 62 cm holding 60 L, u = 0.968 L; 12 u = 11.6 L. 28 days expect 10.8 L, 56 days 21.6 L: the window is 56 days.
        Assert.Equal(Severity.Plan, finding!.Severity);
        Assert.Equal(0.4, finding.Evidence[0].Value!.Value, 0.01);
        Assert.Equal(56 * expectedPerDay, finding.Evidence[2].Value!.Value, 0.15);
        Assert.Equal(0.75, finding.Evidence[0].LimitLow);
        Assert.Equal("D-INH", finding.About!.Drum);
    }

    [Fact]
    public void FeedLow_WindowTooShort_IsNotJudged()
    {
        var assessment = new HistoryBuilder { InhibitorPerDayL = 0.1 }.Every(28, 2).Assess();

        Assert.Empty(assessment.All(FindingKinds.FeedLow));
        Assert.Contains(assessment.NotJudged, n => n.Kind == FindingKinds.FeedLow && n.Why.Code == "window-too-short");
    }

    [Fact]
    public void FeedLow_ResidualAgrees_IsAct() => Assert.Equal(
        Severity.Act,
        new HistoryBuilder { InhibitorPerDayL = 0.15, Inhibitor = 40, System = WithoutPumps }.Every(28, 3).Assess().Open(FindingKinds.FeedLow)!.Severity);

    [Fact]
    public void FeedHigh_TwiceTheExpected_IsFound()
    {
        var finding = new HistoryBuilder { InhibitorPerDayL = 0.77 }.Every(28, 4).Assess().Open(FindingKinds.FeedHigh);

        Assert.Equal(2.0, finding!.Evidence[0].Value!.Value, 0.05);
    }

    [Fact]
    public void Feed_DrumExchangedWithItsNewLevel_IsNoFinding()
    {
        var builder = new HistoryBuilder { RefillAtL = 0 }.Every(28, 3);
        builder.Visit(84, record => record with { Drums = [record.Drums[0] with { AddedL = null, Swapped = true, Left = 60 }] });
        builder.Visit(112, record => record with { Drums = [new DrumReading { Drum = "D-INH", Level = 60 - (28 * 0.3849 / 60 * 62), Unit = "cm" }] });
        var assessment = builder.Assess();

        Assert.Empty(assessment.All(FindingKinds.FeedLow));
        Assert.Empty(assessment.All(FindingKinds.FeedHigh));
        Assert.Equal(1.0, assessment.Figure(FigureCodes.UsedOverExpected, builder.IdOf(4))!.Result.Value.Value, 0.02);
    }

    [Fact]
    public void Feed_ShareBoughtByLevelsAlone_CarriesTheUncertaintyOfTwoLevels()
    {
        var builder = new HistoryBuilder().Every(28, 18);
        var used = builder.Assess().Figure(FigureCodes.ProductUsed, builder.IdOf(17))!.Result.Value;

        // Two dips of 1 cm, 60 L / 62 cm each, which the drum's own readings bear out: sqrt(2) × 0.968 = 1.369 L, however many visits lie between.
        Assert.Equal(1.369, used.StandardUncertainty, 0.005);
    }

    [Fact]
    public void Feed_CalendarDoses_CountsTheDosesPlanned()
    {
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with
            {
                Feeds = [new Feed { Drum = "D-INH", Mode = FeedMode.DosePlan, Weeks = [1, 2, 3, 4], Days = [Weekday.Tuesday, Weekday.Friday], Starts = ["21:30"], RunMinutes = 19 }],
            },
            InhibitorPerDayL = 0,
        };
        var finding = builder.Every(28, 6).Assess().Open(FindingKinds.FeedLow);

        // 4 weeks × 2 doses × 19 min × 1.283 L/h = 3.25 L; 12 u(level) = 14.4 L: five intervals, 40 doses, 16.3 L, none of it used.
        Assert.Equal(40 * 19 / 60.0 * 1.283, finding!.Evidence[2].Value!.Value, 0.001);
        Assert.Equal(0, finding.Evidence[1].Value!.Value, 1e-9);

        // Stopped from 10 to 23 February: of its four doses one waits and runs after it.
        builder.System = system => system with { Operation = new Domain.Sites.Operation { Stops = [new Domain.Sites.Stop { From = new DateOnly(2025, 2, 10), To = new DateOnly(2025, 2, 23) }] } };
        Assert.Equal(37 * 19 / 60.0 * 1.283, builder.Assess().Open(FindingKinds.FeedLow)!.Evidence[2].Value!.Value, 0.001);
    }

    [Fact]
    public void ResidualLow_BeyondUncertainty_IsPlan_BelowQuarter_IsAct()
    {
        // 60 mg/L: u = 8 % = 4.8, 2u = 9.6; the low end is 80, 20 below. 15 mg/L is under a quarter of 80.
        Assert.Equal(Severity.Plan, new HistoryBuilder().Every(28, 2).Visit(56, Residual(60)).Assess().Open(FindingKinds.ResidualLow)!.Severity);
        Assert.Equal(Severity.Act, new HistoryBuilder().Every(28, 2).Visit(56, Residual(15)).Assess().Open(FindingKinds.ResidualLow)!.Severity);
    }

    [Fact]
    public void ResidualLow_NamesItsTestInTheReadersLanguage()
    {
        var found = new HistoryBuilder().Every(28, 2).Visit(56, Residual(60)).Assess().Findings.Single(finding => finding.InEnglish.Kind == FindingKinds.ResidualLow);

        Assert.StartsWith("Inhibitor is ", found.InEnglish.Text, StringComparison.Ordinal);
        Assert.StartsWith("Inhibidor: ", found.InSpanish.Text, StringComparison.Ordinal);
        Assert.StartsWith("Inibidor: ", found.InPortuguese.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void ResidualLow_WithinUncertainty_IsWatchOnceAndPlanTwice()
    {
        Assert.Equal(Severity.Watch, new HistoryBuilder().Every(28, 2).Visit(56, Residual(75)).Assess().Open(FindingKinds.ResidualLow)!.Severity);
        Assert.Equal(Severity.Plan, new HistoryBuilder().Every(28, 2).Visit(56, Residual(75)).Visit(84, Residual(75)).Assess().Open(FindingKinds.ResidualLow)!.Severity);
    }

    [Theory]
    [InlineData("P-40", "N-15", true)]
    [InlineData("N-15", "P-40", false)]
    public void ResidualLow_JustDosed_CountsByTheDrumOfTheDay(string before, string now, bool judged)
    {
        // A slug of the product that the test shows ran an hour before the visit; what the drum held in other days ran none.
        var drum = new Drum { Code = "D-2", Product = before, Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 };
        var builder = new HistoryBuilder
        {
            Programme = programme => programme with
            {
                Feeds = [.. programme.Feeds, new Feed { Drum = "D-2", Output = "second", Mode = FeedMode.DosePlan, Weeks = [1, 2, 3, 4], Days = [Weekday.Monday], Starts = ["08:00"], RunMinutes = 10 }],
            },
            System = system => system with { Drums = [.. system.Drums, drum, drum with { Product = now, From = new DateOnly(2025, 1, 5) }] },
        };

        var assessment = builder.Every(28, 2).Visit(56, Residual(15)).Assess();

        Assert.Equal(judged, assessment.All(FindingKinds.ResidualLow).Any());
        Assert.Equal(!judged, assessment.NotJudged.Any(one => one.Kind == FindingKinds.ResidualLow));
    }

    [Fact]
    public void ResidualHigh_MoreThanTwiceTheHighEnd_IsAct() =>
        Assert.Equal(Severity.Act, new HistoryBuilder().Every(28, 2).Visit(56, Residual(260)).Assess().Open(FindingKinds.ResidualHigh)!.Severity);

    [Fact]
    public void ResidualLow_UntilReadAgain_StaysOpenAndThenCloses()
    {
        var builder = new HistoryBuilder().Every(28, 2).Visit(56, Residual(60)).Visit(84, record => record with { Readings = [] });
        Assert.NotNull(builder.Assess().Open(FindingKinds.ResidualLow));

        builder.Visit(112, Residual(100));

        Assert.Equal(FindingState.Closed, builder.Assess().All(FindingKinds.ResidualLow).Single().State);
    }

    [Fact]
    public void RunsOut_BeforeTheNextVisit_IsAct()
    {
        // 2.1 L above the heel of 2 L at 0.385 L a day: about 5 days, the next visit is 28 days off.
        var builder = new HistoryBuilder { RefillAtL = 0 }.Every(28, 3).Visit(84, Level(4.1));
        var finding = builder.Assess().Open(FindingKinds.RunsOut);

        Assert.Equal(Severity.Act, finding!.Severity);
        Assert.Equal(100, finding.Evidence[0].Value!.Value, 1.0);
        Assert.Equal(2.1, finding.Evidence[2].Value!.Value, 0.01);
    }

    [Fact]
    public void RunsOut_SpareDrumOnSite_IsCounted() =>
        Assert.Empty(new HistoryBuilder { RefillAtL = 0 }.Every(28, 3).Visit(84, record => Level(4.1)(record) with { Drums = [Level(4.1)(record).Drums[0] with { SpareL = 60 }] }).Assess().All(FindingKinds.RunsOut));

    [Theory]
    [InlineData(14, false)]
    [InlineData(28, true)]
    public void RunsOut_CalendarDose_CountsThePlannedDosesToTheNextVisit(double everyDays, bool runsOut)
    {
        // One dose in four weeks, on Wednesday 29 January and 26 February. It took 10 L; 10 L stand above the heel on
        // 3 February: enough until a visit on the 17th, whatever was used in the last fourteen days, not until one on 3 March.
        var builder = new HistoryBuilder
        {
            VisitEveryDays = everyDays,
            Programme = programme => programme with
            {
                Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.DosePlan, Weeks = [1], Days = [Weekday.Wednesday], Starts = ["21:00"], RunMinutes = 60 }],
            },
        };
        builder.Visit(0, Level(22)).Visit(14, Level(22)).Visit(28, Level(12));

        Assert.Equal(runsOut, builder.Assess().Open(FindingKinds.RunsOut) is not null);
    }

    // A calendar dose does not follow the load: its use comes from the shortest stretch in which it is 17 times its uncertainty.
    [Fact]
    public void RunsOut_CalendarDose_TakesItsUseFromATellingStretch()
    {
        var history = new DosedTower().Weeks(14).Builder.Build();
        VisitFacts? last = null;
        foreach (var visit in history.Visits)
        {
            last = new VisitFacts(history, visit, last);
        }

        var run = last!.RunOuts.Single(r => r.Drum.Drum.Code == "D-B1");
        Assert.Equal(2 * DosedTower.DoseL, run.Used!.Value / run.UsedDoses!.Value * 2, 0.01);
        Assert.True(run.Used.Value >= 17 * run.Used.StandardUncertainty);
        Assert.True(run.Used.Value - (2 * DosedTower.DoseL) < 17 * run.Used.StandardUncertainty);
    }

    [Fact]
    public void RunsOut_NextVisitOverdue_OpensOnADayBetween()
    {
        // 30 L above the heel after a year's use of 0.385 L a day: 78 days, well past the next visit in 28; nobody comes.
        var builder = new HistoryBuilder { RefillAtL = 0 }.Every(28, 3).Visit(84, Level(20));
        var atVisit = builder.Assess();
        var later = builder.Assess(HistoryBuilder.Start.AddDays(150));

        Assert.Empty(atVisit.All(FindingKinds.RunsOut));
        var finding = later.Open(FindingKinds.RunsOut)!;
        Assert.Null(finding.FirstVisit);

        // 18 L / 0.385 L/d = 46.8 days after 31 March, give or take 15 %; without a new reading the chance must pass 80 %.
        Assert.InRange(finding.FirstSeen, new DateOnly(2025, 5, 17), new DateOnly(2025, 5, 27));
    }

    [Fact]
    public void RunsOut_OutOfSeason_DoesNotOpen()
    {
        var builder = new HistoryBuilder
        {
            RefillAtL = 0,
            System = system => system with { Operation = new Domain.Sites.Operation { Seasons = [new Domain.Sites.Season { From = "01-01", To = "03-31" }] } },
        };

        Assert.Empty(builder.Every(28, 3).Visit(84, Level(20)).Assess(HistoryBuilder.Start.AddDays(150)).All(FindingKinds.RunsOut));
    }

    [Fact]
    public void RunsOut_StopOnFile_UsesNothingInIt()
    {
        // 18 L above the heel at 0.385 L a day are 46.8 days of running. Read on 31 March, stopped from 3 April to 30 June: on 1 July it has used a litre.
        var builder = new HistoryBuilder
        {
            RefillAtL = 0,
            System = system => system with { Operation = new Domain.Sites.Operation { Stops = [new Domain.Sites.Stop { From = new DateOnly(2025, 4, 3), To = new DateOnly(2025, 6, 30) }] } },
        }.Every(28, 3).Visit(84, Level(20));

        Assert.Empty(builder.Assess(new DateTime(2025, 7, 20, 9, 0, 0, DateTimeKind.Utc)).All(FindingKinds.RunsOut));
        Assert.NotNull(builder.Assess(new DateTime(2025, 9, 20, 9, 0, 0, DateTimeKind.Utc)).Open(FindingKinds.RunsOut));
    }

    [Fact]
    public void Feed_OneLevelTooLow_MakesNoHeadlineHoweverOftenAWindowBeginsWithIt()
    {
        // A dip 5 L too low on a visit every week: every window that begins with it seems to use too little.
        var builder = new HistoryBuilder { System = WithoutPumps, RefillAtL = 20 }.Every(7, 16);
        builder.Visit(112, record => record with { Drums = [record.Drums[0] with { Level = record.Drums[0].Level - (5 / 60.0 * 62) }] });
        for (var i = 17; i < 26; i++)
        {
            builder.Visit(7 * i);
        }

        Assert.DoesNotContain(builder.Assess().All(FindingKinds.FeedLow), finding => finding.Severity >= Severity.Plan);
    }

    // The builder's hours go on as usual: with a pump on file its output would be the headline.
    private static Domain.Sites.WaterSystem WithoutPumps(Domain.Sites.WaterSystem system) => system with { Pumps = [] };

    private static Func<VisitedSystem, VisitedSystem> Residual(double value) => record => record with
    {
        Readings = [.. record.Readings.Where(r => r.Test != TestCodes.Inhibitor), HistoryBuilder.Tower(TestCodes.Inhibitor, value, "mg/L")],
    };

    private static Func<VisitedSystem, VisitedSystem> Level(double litres) =>
        record => record with { Drums = [new DrumReading { Drum = "D-INH", Level = litres / 60 * 62, Unit = "cm" }] };
}
