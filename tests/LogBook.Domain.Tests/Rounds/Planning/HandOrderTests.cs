using LogBook.Domain.Rounds.Planning;

namespace LogBook.Domain.Tests.Rounds.Planning;

public sealed class HandOrderTests
{
    private static readonly DayPlan Day = new(new DateOnly(2025, 3, 3));

    [Fact]
    public void Arrange_Stop_TakesItsPlaceAmongThoseShownAndLeavesOthersAlone()
    {
        var plan = Day.Assign("TOL-1", "RYA").Arrange("RYA", ["YAF-1", "NUR-1", "GRO-1"], "gro-1", -1).Arrange("PUM", ["SNE-1", "PLU-1"], "PLU-1", -1);

        Assert.Equal([0, 2, 1], new[] { "YAF-1", "NUR-1", "GRO-1" }.Select(site => plan.PlaceByHand("rya", site)));
        Assert.Equal([1, 0], new[] { "SNE-1", "PLU-1" }.Select(site => plan.PlaceByHand("PUM", site)));
        Assert.Null(plan.PlaceByHand("RYA", "SNE-1"));
        Assert.Equal(["TOL-1"], plan.Of("RYA").Select(stop => stop.Site));
    }

    [Fact]
    public void Arrange_AnotherGroup_KeepsTheOrderOfTheFirst()
    {
        var plan = Day.Arrange("RYA", ["YAF-1", "NUR-1"], "NUR-1", -1).Arrange("RYA", ["GRO-1", "UMB-1"], "UMB-1", -1);

        Assert.Equal(["NUR-1", "YAF-1", "UMB-1", "GRO-1"], Assert.Single(plan.ByHand!).Sites);
    }

    [Theory]
    [InlineData("YAF-1", -1)]
    [InlineData("NUR-1", 5)]
    [InlineData("XXX-1", 1)]
    public void Arrange_NowhereToGo_IsTheSamePlan(string site, int steps) => Assert.Same(Day, Day.Arrange("RYA", ["YAF-1", "NUR-1"], site, steps));

    [Fact]
    public void MinutesSpent_WithoutAnEndOrBeforeTheBegin_IsNotKnown()
    {
        var arrived = new DateTime(2025, 3, 3, 9, 5, 0, DateTimeKind.Utc);

        Assert.Equal(65, VisitNeed.MinutesSpent(arrived, arrived.AddMinutes(65)));
        Assert.Null(VisitNeed.MinutesSpent(arrived, null));
        Assert.Null(VisitNeed.MinutesSpent(arrived, arrived.AddMinutes(-1)));
    }
}
