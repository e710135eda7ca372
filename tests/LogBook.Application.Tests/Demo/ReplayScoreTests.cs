using LogBook.Application.Demo;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Application.Tests.Demo;

public class ReplayScoreTests
{
    private static readonly DateOnly Onset = new(2026, 3, 1);
    private static readonly DateOnly Latest = new(2026, 3, 20);

    [Theory]
    [InlineData("2026-03-20", true)]
    [InlineData("2026-03-21", false)]
    public void Of_RightHeadline_IsInTimeUntilItsLatestDay(string day, bool inTime)
    {
        var line = Score(Headline(FindingKinds.WaterLoss, "A-1", day)).Lines[0];

        Assert.Equal(DateOnly.ParseExact(day, "yyyy-MM-dd"), line.Found!.From);
        Assert.Equal(inTime, line.IsInTime);
    }

    [Fact]
    public void Of_HeadlineBeforeTheOnsetOrAtAnotherSiteOrOfAnotherKind_IsNotTheRightOne()
    {
        var report = Score(
            Headline(FindingKinds.WaterLoss, "A-1", "2026-02-20"), Headline(FindingKinds.WaterLoss, "B-1", "2026-03-05"), Headline(FindingKinds.CyclesLow, "A-1", "2026-03-06"));

        Assert.Null(report.Lines[0].Found);
        Assert.Equal(FindingKinds.CyclesLow, report.Lines[0].First!.Kind);
        Assert.Empty(report.InTime);
        Assert.Equal(["ST5"], report.Stories);
    }

    [Fact]
    public void Of_SubjectAsked_OnlyThatSubjectIsRight()
    {
        var answer = Answer() with { Kinds = [FindingKinds.ClockDue], About = new Dictionary<string, string> { [FindingKinds.ClockDue] = "OXT-START" } };

        Assert.Null(Score(answer, Headline(FindingKinds.ClockDue, "A-1", "2026-03-05") with { About = "legionella OXT-LEG" }).Lines[0].Found);
        Assert.NotNull(Score(answer, Headline(FindingKinds.ClockDue, "A-1", "2026-03-05") with { About = "legionella OXT-START" }).Lines[0].Found);
    }

    [Theory]
    [InlineData("2026-02-01", "2026-03-01", 0)]
    [InlineData("2026-02-01", "2026-03-02", 1)]
    [InlineData("2026-03-31", "2026-04-30", 1)]
    [InlineData("2026-04-01", "2026-04-30", 0)]
    public void Of_ForbiddenHeadline_CountsWhileItStandsInItsDays(string from, string until, int expected)
    {
        var report = Score(Headline(FindingKinds.FeedLow, "A-1", from, until));

        Assert.Equal(expected, report.Forbidden);
    }

    [Fact]
    public void Of_ForbiddenHeadlineBesideItsCause_IsBearable()
    {
        var answer = Answer() with
        {
            Forbidden = [new DemoForbidden { Kinds = [FindingKinds.MicrobiologyHigh], From = Onset, Until = Latest, UnlessWith = [FindingKinds.ControllerClock] }],
        };
        var wrong = Headline(FindingKinds.MicrobiologyHigh, "A-1", "2026-03-02", "2026-03-10");

        Assert.Equal(1, Score(answer, wrong).Forbidden);
        Assert.Equal(0, Score(answer, wrong, Headline(FindingKinds.ControllerClock, "A-1", "2026-03-01", "2026-03-10")).Forbidden);
        Assert.Equal(new DateOnly(2026, 3, 8), Score(answer, wrong, Headline(FindingKinds.ControllerClock, "A-1", "2026-03-01", "2026-03-08")).Lines[0].Forbidden.Single().From);
    }

    [Fact]
    public void Of_HeadlinesOutsideStories_AreFalseFlagsUnlessTheyFallDue()
    {
        var report = Score(
            Headline(FindingKinds.FeedLow, "A-1", "2026-02-10", "2026-02-20"),
            Headline(FindingKinds.FeedLow, "A-1", "2026-03-10", "2026-03-12"),
            Headline(FindingKinds.ClockDue, "B-1", "2026-03-10"),
            Headline(FindingKinds.CyclesHigh, "B-1", "2026-03-10"),
            Headline(FindingKinds.CyclesHigh, "B-1", "2026-03-15") with { IsNew = false });

        Assert.Equal([("A-1", "2026-02-10"), ("B-1", "2026-03-10")], report.FalseFlags.Select(f => (f.Site!, f.From.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture))));
        Assert.Single(report.Control.Single().Flags);

        // A-1 is healthy in January and February and after its trouble is over, B-1 throughout 2026.
        Assert.Equal((59 + 245 + 365) / 365.25, report.HealthyYears, 1e-9);
        Assert.Equal(2 / report.HealthyYears, report.FalseFlagsPerYear, 1e-12);
    }

    private static DemoAnswer Answer() => new()
    {
        Story = "ST5",
        Site = "A-1",
        System = "CT-1",
        Kinds = [FindingKinds.WaterLoss],
        Onset = Onset,
        Latest = Latest,
        Over = new DateOnly(2026, 4, 30),
        Forbidden = [new DemoForbidden { Kinds = [FindingKinds.FeedLow], From = Onset, Until = new DateOnly(2026, 3, 31) }],
    };

    private static Headline Headline(string kind, string site, string from, string until = "2027-01-01") =>
        new(kind, site, "", DateOnly.ParseExact(from, "yyyy-MM-dd"), DateOnly.ParseExact(until, "yyyy-MM-dd"), Severity.Plan, IsNew: true);

    private static ReplayReport Score(params Headline[] headlines) => Score(Answer(), headlines);

    private static ReplayReport Score(DemoAnswer answer, params Headline[] headlines)
    {
        var control = Answer() with { Story = "ST12", Site = "B-1", Kinds = [], Forbidden = [], MostPlanOrAct = 1 };
        var document = new ExchangeDocument
        {
            Format = "logbook-exchange",
            Version = 1,
            Sites = [Site("A-1"), Site("B-1")],
            Visits = [FirstVisit("A-1"), FirstVisit("B-1")],
        };
        return ReplayScore.Of(new DemoFirmResult(document, new DemoAnswers([answer, control]), []), headlines, 1);
    }

    private static Domain.Sites.Site Site(string code) => new() { Code = code, Customer = "A", Name = code, TimeZone = "Etc/UTC" };

    private static Visit FirstVisit(string site) => new()
    {
        Id = Guid.Empty,
        Site = site,
        Technician = "RYA",
        Kind = VisitKind.Routine,
        Arrived = Moment.OfUtc(new DateTime(2026, 1, 1, 9, 0, 0, DateTimeKind.Utc)),
    };
}
