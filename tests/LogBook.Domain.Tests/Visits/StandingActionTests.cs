using CsCheck;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Visits;

public class StandingActionTests
{
    private static readonly DateTime Start = new(2025, 1, 6, 9, 0, 0, DateTimeKind.Utc);
    private static readonly VisitAction Valve = new() { Id = Guid.Parse("0198b000-0000-7000-8000-0000000000a1"), Text = "renew the float valve" };

    [Fact]
    public void Of_AskedLongAgo_StandsSinceThen_WithItsLatestWord()
    {
        var standing = Assert.Single(StandingAction.Of([On(0, Valve), On(400, Valve with { Owner = "RYA" }), On(500)]));

        Assert.Equal(("YAF-1", "CT-1", Start, "RYA"), (standing.Site, standing.System, standing.Since, standing.Action.Owner));
    }

    [Theory]
    [InlineData(ActionState.Done)]
    [InlineData(ActionState.Dropped)]
    public void Of_Closed_StandsNoMore_UnlessItIsOpenedAgain(ActionState closed)
    {
        Assert.Empty(StandingAction.Of([On(0, Valve), On(7, Valve with { State = closed })]));
        Assert.Single(StandingAction.Of([On(0, Valve), On(7, Valve with { State = closed }), On(14, Valve with { State = ActionState.Open })]));
    }

    [Fact]
    public void Of_WithoutIdentity_IsKnownAgainByItsText() => Assert.Empty(StandingAction.Of([On(0, Valve with { Id = null }), On(7, Valve with { Id = null, State = ActionState.Done })]));

    [Fact]
    public void Of_SameActionOfAnotherSystem_IsAnother()
    {
        var other = On(7, Valve with { State = ActionState.Done });

        Assert.Single(StandingAction.Of([On(0, Valve), other with { Systems = [other.Systems[0] with { System = "CT-2" }] }]));
    }

    [Fact]
    public void Of_VisitsInAnyOrder_IsTheSame() => Gen.Shuffle(Enumerable.Range(0, 6).ToArray()).Sample(order =>
    {
        Visit[] visits = [On(0, Valve), On(7, Valve with { State = ActionState.Done }), On(14), On(21, Valve with { State = ActionState.Open }), On(28, Valve with { Id = null, Text = "paint the ladder" }), On(35)];

        Assert.Equal(StandingAction.Of(visits), StandingAction.Of(order.Select(at => visits[at])));
    });

    private static Visit On(int day, params VisitAction[] actions) => new()
    {
        Id = Guid.CreateVersion7(new DateTimeOffset(Start.AddDays(day))),
        Site = "YAF-1",
        Technician = "RYA",
        Arrived = Moment.OfUtc(Start.AddDays(day)),
        Systems = [new VisitedSystem { System = "CT-1", Actions = actions }],
    };
}
