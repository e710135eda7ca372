using LogBook.Domain.Clocks;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Clocks;

public sealed class RunningClockTests
{
    private static readonly TimeZoneInfo London = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");

    private static readonly Rule Monthly = new()
    {
        Code = "OXT-DIP", Name = "Oxterhelm Code, dip slide", From = new DateOnly(2024, 7, 1), Test = TestCodes.DipSlide, EveryDays = 30,
    };

    [Fact]
    public void Interval_EndsWithItsLastDayInTheZoneOfTheSite()
    {
        // Sampled 6 March 2025; 30 days are over with 5 April, which in London ends at 23:00 UTC, because summer time has begun.
        var builder = new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null }.Visit(59, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });

        var clock = Assert.Single(builder.Assess().Clocks);

        Assert.Equal(new DateTime(2025, 4, 5, 23, 0, 0, DateTimeKind.Utc), clock.Due);
        Assert.Equal(ClockStanding.Running, clock.StandingAt(clock.Soon.AddSeconds(-1)));
        Assert.Equal(ClockStanding.DueSoon, clock.StandingAt(clock.Due.AddSeconds(-1)));
        Assert.Equal(ClockStanding.Missed, clock.StandingAt(clock.Due));
    }

    [Fact]
    public void Interval_SoonAndMissed_AreTheDaysOfTheFinding()
    {
        var builder = new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null }.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });
        for (var day = 1; day < 40; day++)
        {
            var moment = HistoryBuilder.Start.AddDays(day);
            var result = builder.Assess(moment);
            var standing = Assert.Single(result.Clocks).StandingAt(moment);
            var open = result.Findings.Any(finding => finding.InEnglish is { Kind: "clock-due", State: LogBook.Domain.Findings.FindingState.Open });

            Assert.True(open == standing is ClockStanding.DueSoon or ClockStanding.Missed, $"day {day}: {standing}, finding {open}");
        }
    }

    [Fact]
    public void Interval_NeverDone_IsUnknownUntilItIsMissed()
    {
        var clock = Assert.Single(new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null }.Visit(0).Assess().Clocks);

        Assert.Equal(ClockStanding.Unknown, clock.StandingAt(HistoryBuilder.Start.AddDays(2)));
        Assert.Equal(ClockStanding.Missed, clock.StandingAt(HistoryBuilder.Start.AddDays(40)));
        Assert.Null(clock.LastDone);
    }

    [Fact]
    public void Interval_OfOperatingDays_PassesOverTheStop()
    {
        // 30 days of operation after 6 January, with ten days of a stop from the 11th on: 15 February instead of 5 February.
        var builder = new HistoryBuilder
        {
            Rules = [Monthly with { OperatingDaysOnly = true }],
            VisitEveryDays = null,
            System = system => system with { Operation = new Operation { Stops = [new Stop { From = new DateOnly(2025, 1, 11), To = new DateOnly(2025, 1, 20) }] } },
        }.Visit(0, record => record with { Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL")] });

        var clock = Assert.Single(builder.Assess().Clocks);

        Assert.Equal(new DateTime(2025, 2, 16, 0, 0, 0, DateTimeKind.Utc), clock.Due);
        Assert.True(clock.CountsOperatingDays);
    }

    [Fact]
    public void Interval_SampleWithoutResult_IsDoneAndPending()
    {
        var builder = new HistoryBuilder { Rules = [Monthly], VisitEveryDays = null }.Visit(0, record => record with
        {
            Readings = [HistoryBuilder.Tower(TestCodes.DipSlide, 100, "[CFU]/mL") with { ResultAt = LogBook.Domain.Exchange.Moment.OfUtc(HistoryBuilder.Start.AddDays(2)) }],
        });

        Assert.True(Assert.Single(builder.Assess(HistoryBuilder.Start.AddDays(1)).Clocks).IsPending);
        Assert.False(Assert.Single(builder.Assess(HistoryBuilder.Start.AddDays(3)).Clocks).IsPending);
    }

    [Fact]
    public void Visit_IsMissedFromTheDayTheExchangeFormatCallsItLate()
    {
        var last = new DateOnly(2025, 1, 6);
        var due = VisitDue.On(last, 28, [])!.Value;

        var clock = RunningClock.OfVisit(London, last, due, 28, []);

        for (var day = last; day < last.AddDays(60); day = day.AddDays(1))
        {
            var noon = day.ToDateTime(new TimeOnly(12, 0), DateTimeKind.Utc);
            Assert.Equal(VisitDue.IsLate(last, 28, [], day), clock.StandingAt(noon) == ClockStanding.Missed);
        }
    }

    [Fact]
    public void Summary_AcceptedInTime_IsMet_LaterIsLate()
    {
        var left = new DateTime(2025, 3, 3, 10, 0, 0, DateTimeKind.Utc);

        Assert.Equal((ClockStanding.Met, false), Of(left.AddHours(5)));
        Assert.Equal((ClockStanding.Met, true), Of(left.AddHours(25)));
        Assert.Equal((ClockStanding.Missed, false), Of(null));

        (ClockStanding, bool) Of(DateTime? accepted)
        {
            var clock = RunningClock.OfSummary(Guid.CreateVersion7(), left, 24, accepted);
            return (clock.StandingAt(left.AddHours(26)), clock.WasLate);
        }
    }
}
