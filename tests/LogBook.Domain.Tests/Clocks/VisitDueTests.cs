using LogBook.Domain.Clocks;

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
        Assert.Equal(expected, VisitDue.IsLate(Last, everyDays, Last.AddDays(daysSince)));

    [Fact]
    public void On_WithoutVisitOrInterval_HasNoDay()
    {
        Assert.Null(VisitDue.On(null, 7));
        Assert.Null(VisitDue.On(Last, null));
        Assert.Equal(new DateOnly(2025, 3, 31), VisitDue.On(Last, 28));
    }
}
