using LogBook.Domain.Clocks;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Clocks;

public sealed class VisitDueTests
{
    private static readonly DateOnly Last = new(2025, 3, 3);

    [Theory]
    [InlineData(28, 35, false)]
    [InlineData(28, 36, true)]
    [InlineData(7, 8, false)]
    [InlineData(7, 9, true)]
    [InlineData(3.5, 5, false)]
    public void IsLate_AtAQuarterAndTwoDaysOver_TurnsLate(double everyDays, int daysSince, bool expected) =>
        Assert.Equal(expected, VisitDue.IsLate(Last, everyDays, [], Last.AddDays(daysSince)));

    [Fact]
    public void On_WithoutVisitOrInterval_HasNoDay()
    {
        Assert.Null(VisitDue.On(null, 7, []));
        Assert.Null(VisitDue.On(Last, null, []));
        Assert.Equal(new DateOnly(2025, 3, 31), VisitDue.On(Last, 28, []));
    }

    [Fact]
    public void On_SiteOutOfSeason_WaitsForTheNextSeason()
    {
        var summer = new Operation { Seasons = [new Season { From = "05-01", To = "09-30" }] };

        // Last seen on 28 September: two operating days are left of the season, the other five fall into May.
        Assert.Equal(new DateOnly(2026, 5, 5), VisitDue.On(new DateOnly(2025, 9, 28), 7, [summer]));
        Assert.False(VisitDue.IsLate(new DateOnly(2025, 9, 28), 7, [summer], new DateOnly(2026, 1, 15)));
        Assert.True(VisitDue.IsLate(new DateOnly(2025, 9, 28), 7, [summer], new DateOnly(2026, 5, 8)));
    }

    [Fact]
    public void On_OneOfTwoSystemsRuns_CountsTheDay()
    {
        var summer = new Operation { Seasons = [new Season { From = "05-01", To = "09-30" }] };

        Assert.Equal(new DateOnly(2025, 10, 5), VisitDue.On(new DateOnly(2025, 9, 28), 7, [summer, null]));
    }
}
