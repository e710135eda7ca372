using LogBook.Domain.Clocks;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Clocks;

public sealed class SummaryPromiseTests
{
    private static readonly TimeZoneInfo London = TimeZoneInfo.FindSystemTimeZoneById("Europe/London");
    private static readonly Site Site = new() { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" };

    [Theory]
    [InlineData("2025-03-03T10:10:00Z", 10, "2025-04-10T23:00:00Z")] // Summer time has begun: the 10th ends an hour earlier in UTC.
    [InlineData("2025-01-31T10:10:00Z", 10, "2025-02-11T00:00:00Z")]
    [InlineData("2025-12-24T10:10:00Z", 28, "2026-01-29T00:00:00Z")]
    [InlineData("2025-07-31T23:30:00Z", 10, "2025-09-10T23:00:00Z")] // At the site it is the 1st of August.
    public void DueOf_ByADayOfTheMonth_IsTheEndOfThatDayInTheNextMonthOfTheSite(string left, int day, string due)
    {
        var site = Site with { SummaryByMonthDay = day };

        Assert.Equal(Utc(due), SummaryPromise.DueOf(site, London, Utc(left)));
        Assert.Equal(DateOnly.FromDateTime(TimeZoneInfo.ConvertTimeFromUtc(Utc(due), London)).AddDays(-1), SummaryPromise.DayOf(site, London, Utc(left)));
    }

    [Fact]
    public void DueOf_BothPromised_IsTheEarlier()
    {
        var left = Utc("2025-03-03T10:10:00Z");

        Assert.Equal(left.AddHours(24), SummaryPromise.DueOf(Site with { SummaryWithinHours = 24, SummaryByMonthDay = 10 }, London, left));
        Assert.Null(SummaryPromise.DayOf(Site with { SummaryWithinHours = 24, SummaryByMonthDay = 10 }, London, left));
        Assert.Equal(Utc("2025-04-10T23:00:00Z"), SummaryPromise.DueOf(Site with { SummaryWithinHours = 2400, SummaryByMonthDay = 10 }, London, left));
        Assert.Equal(left.AddHours(24), SummaryPromise.DueOf(Site with { SummaryWithinHours = 24 }, London, left));
        Assert.Null(SummaryPromise.DueOf(Site, London, left));
    }

    [Fact]
    public void Clock_OfAPromisedDay_RunsToItsEnd()
    {
        var (left, due) = (Utc("2025-03-03T10:00:00Z"), Utc("2025-04-10T23:00:00Z"));

        var clock = RunningClock.OfSummary(Guid.CreateVersion7(), left, due, null);

        Assert.Equal((due, ClockStanding.Running, ClockStanding.DueSoon), (clock.Due, clock.StandingAt(left.AddDays(20)), clock.StandingAt(left.AddDays(35))));
        Assert.Equal((ClockStanding.DueSoon, ClockStanding.Missed), (clock.StandingAt(due.AddSeconds(-1)), clock.StandingAt(due)));
    }

    private static DateTime Utc(string text) => DateTime.Parse(text, System.Globalization.CultureInfo.InvariantCulture, System.Globalization.DateTimeStyles.AdjustToUniversal);
}
