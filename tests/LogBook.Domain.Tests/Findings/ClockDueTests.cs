using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;

namespace LogBook.Domain.Tests.Findings;

public class ClockDueTests
{
    private static readonly Rule Monthly = new()
    {
        Code = "OXT-DIP",
        Name = "Oxterhelm Code, dip slide",
        From = new DateOnly(2024, 7, 1),
        Test = TestCodes.DipSlide,
        EveryDays = 30,
    };

    [Fact]
    public void Visit_MoreThanAQuarterOverTheInterval_IsPlanOnThatDay()
    {
        // Last visit 6 January, every 28 days, late from 28 × 1.25 = 35 days on: day 36 is 11 February.
        var builder = new HistoryBuilder().Visit(0);

        Assert.Empty(builder.Assess(HistoryBuilder.Start.AddDays(35)).All(FindingKinds.ClockDue));
        var finding = builder.Assess(HistoryBuilder.Start.AddDays(50)).Open(FindingKinds.ClockDue)!;
        Assert.Equal((Severity.Plan, new DateOnly(2025, 2, 11)), (finding.Severity, finding.FirstSeen));
        Assert.Null(finding.FirstVisit);
    }

    [Fact]
    public void Visit_Made_ClosesIt()
    {
        var finding = new HistoryBuilder().Visit(0).Visit(50).Assess().All(FindingKinds.ClockDue).Single();

        Assert.Equal((FindingState.Closed, new DateOnly(2025, 2, 25)), (finding.State, finding.ClosedOn!.Value));
    }

    [Fact]
    public void Visit_OutsideTheSeason_DoesNotCount()
    {
        var builder = new HistoryBuilder
        {
            System = system => system with { Operation = new Operation { Seasons = [new Season { From = "05-01", To = "01-20" }] } },
        };

        Assert.Empty(builder.Visit(0).Assess(HistoryBuilder.Start.AddDays(110)).All(FindingKinds.ClockDue));
    }

    [Fact]
    public void Test_LastFifthIsWatch_OverdueIsPlan_AuthorityIsAct()
    {
        var builder = new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null };
        builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });

        Assert.Empty(builder.Assess(HistoryBuilder.Start.AddDays(24)).All(FindingKinds.ClockDue));
        Assert.Equal(Severity.Watch, builder.Assess(HistoryBuilder.Start.AddDays(25)).Open(FindingKinds.ClockDue)!.Severity);
        Assert.Equal(Severity.Watch, builder.Assess(HistoryBuilder.Start.AddDays(30)).Open(FindingKinds.ClockDue)!.Severity);
        Assert.Equal(Severity.Plan, builder.Assess(HistoryBuilder.Start.AddDays(31)).Open(FindingKinds.ClockDue)!.Severity);

        builder.Rules = [Monthly with { Jurisdiction = "Oxterhelm" }];
        Assert.Equal(Severity.Act, builder.Assess(HistoryBuilder.Start.AddDays(31)).Open(FindingKinds.ClockDue)!.Severity);
    }

    [Fact]
    public void Test_SampledButResultStillToCome_CountsAsTaken()
    {
        var builder = new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null };
        builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });
        builder.Visit(28, record => record with
        {
            Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL") with { ResultAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(40)) }],
        });

        Assert.Null(builder.Assess(HistoryBuilder.Start.AddDays(35)).Open(FindingKinds.ClockDue));
    }

    [Fact]
    public void Test_LateResultOfAnotherTest_DoesNotCloseAndReopenWhatIsDue()
    {
        var builder = new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null };
        builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });

        // Known before the clock begins to run out, but for one number that comes in when it is overdue.
        builder.Visit(22, record => record with
        {
            Readings = [HistoryBuilder.Tower(TestCodes.ColonyCount, 100, "[CFU]/mL") with { ResultAt = Moment.OfUtc(HistoryBuilder.Start.AddDays(33)) }],
        });

        var finding = Assert.Single(builder.Assess(HistoryBuilder.Start.AddDays(34)).All(FindingKinds.ClockDue));
        Assert.Equal((FindingState.Open, Severity.Plan, Day(25)), (finding.State, finding.Severity, finding.FirstSeen));
    }

    [Fact]
    public void Test_DueSoon_NamesTheDayAndIsOneFindingUntilItIsMet()
    {
        var builder = new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null };
        builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });

        var first = builder.Assess(HistoryBuilder.Start.AddDays(25)).Open(FindingKinds.ClockDue)!;
        var last = builder.Assess(HistoryBuilder.Start.AddDays(30)).Open(FindingKinds.ClockDue)!;
        Assert.Equal(first.Text, last.Text);
        Assert.Contains("5 Feb 2025", first.Text, StringComparison.Ordinal);

        builder.Visit(29, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });
        var met = Assert.Single(builder.Assess(HistoryBuilder.Start.AddDays(40)).All(FindingKinds.ClockDue));
        Assert.Equal((FindingState.Closed, Day(29)), (met.State, met.ClosedOn));
    }

    [Fact]
    public void Test_DueSoonAcrossAStop_NamesTheDayAfterIt()
    {
        var builder = new HistoryBuilder
        {
            Rules = [Monthly with { OperatingDaysOnly = true }],
            VisitEveryDays = null,
            System = system => system with { Operation = new Operation { Stops = [new Stop { From = Day(27), To = Day(36) }] } },
        };
        builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });

        Assert.Contains("15 Feb 2025", builder.Assess(HistoryBuilder.Start.AddDays(26)).Open(FindingKinds.ClockDue)!.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Test_OperatingDaysOnly_SkipsAStop()
    {
        var builder = new HistoryBuilder
        {
            Rules = [Monthly with { OperatingDaysOnly = true }],
            VisitEveryDays = null,
            System = system => system with { Operation = new Operation { Stops = [new Stop { From = new DateOnly(2025, 1, 10), To = new DateOnly(2025, 1, 29) }] } },
        };
        builder.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });

        // 20 days of stop: overdue on day 51, not on day 50.
        Assert.Equal(Severity.Watch, builder.Assess(HistoryBuilder.Start.AddDays(50)).Open(FindingKinds.ClockDue)!.Severity);
        Assert.Equal(Severity.Plan, builder.Assess(HistoryBuilder.Start.AddDays(51)).Open(FindingKinds.ClockDue)!.Severity);
    }

    private static DateOnly Day(int after) => DateOnly.FromDateTime(HistoryBuilder.Start.AddDays(after));
}
