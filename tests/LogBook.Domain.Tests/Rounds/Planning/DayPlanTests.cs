using LogBook.Domain.Rounds.Planning;

namespace LogBook.Domain.Tests.Rounds.Planning;

public sealed class DayPlanTests
{
    private static readonly DayPlan Plan = new DayPlan(new DateOnly(2025, 12, 1)).Assign("NUR-1", "RYA").Assign("SNE-1", "PUM").Assign("GRO-1", "RYA").Assign("YAF-1", "RYA");

    [Fact]
    public void Assign_SiteOfAnother_MovesItBehindTheStopsOfTheNewPerson()
    {
        var plan = Plan.Assign("nur-1", "PUM");

        Assert.Equal(["GRO-1", "YAF-1"], SitesOf(plan, "RYA"));
        Assert.Equal(["SNE-1", "nur-1"], SitesOf(plan, "PUM"));
    }

    [Fact]
    public void Assign_SamePersonAgain_ChangesNothing() => Assert.Same(Plan, Plan.Assign("nur-1", "rya"));

    [Theory]
    [InlineData("YAF-1", -1, "NUR-1 YAF-1 GRO-1")]
    [InlineData("YAF-1", -9, "YAF-1 NUR-1 GRO-1")]
    [InlineData("NUR-1", 1, "GRO-1 NUR-1 YAF-1")]
    [InlineData("NUR-1", -1, "NUR-1 GRO-1 YAF-1")]
    [InlineData("WEN-1", 1, "NUR-1 GRO-1 YAF-1")]
    public void Move_Steps_StaysWithinThePersonsDay(string site, int steps, string order)
    {
        var plan = Plan.Move(site, steps);

        Assert.Equal((order, "SNE-1"), (string.Join(' ', SitesOf(plan, "RYA")), string.Join(' ', SitesOf(plan, "PUM"))));
    }

    [Fact]
    public void TakeOff_Site_LeavesTheOthers() => Assert.Equal(["NUR-1", "YAF-1"], SitesOf(Plan.TakeOff("gro-1"), "RYA"));

    [Fact]
    public void HandOver_Day_KeepsTheOrderBehindWhatStandsThere()
    {
        var plan = Plan.HandOver("RYA", "PUM");

        Assert.Equal(["SNE-1", "NUR-1", "GRO-1", "YAF-1"], SitesOf(plan, "PUM"));
        Assert.Empty(plan.Of("RYA"));
        Assert.Same(Plan, Plan.HandOver("TNU", "PUM"));
    }

    [Fact]
    public void TakeBack_OwnDayHandedOver_GivesBackTheHandedStopsAlone()
    {
        var handed = Plan.HandOver("RYA", "PUM", byThemselves: true);

        Assert.Equal(["NUR-1", "GRO-1", "YAF-1"], handed.HandedBy("rya").Select(stop => stop.Site));
        var back = handed.TakeBack("RYA");
        Assert.Equal(["NUR-1", "GRO-1", "YAF-1"], SitesOf(back, "RYA"));
        Assert.Equal(["SNE-1"], SitesOf(back, "PUM"));
        Assert.Empty(back.HandedBy("RYA"));
        Assert.Same(back, back.TakeBack("RYA"));
    }

    // Who was given a day and hands it on decides; and so does who plans anew or hands over for somebody else.
    [Fact]
    public void TakeBack_SomebodyElseDecidedSince_LeavesThePlan()
    {
        var handed = Plan.HandOver("RYA", "PUM", byThemselves: true);
        var onward = handed.HandOver("PUM", "TNU", byThemselves: true);

        Assert.Same(onward, onward.TakeBack("RYA"));
        Assert.Equal(4, onward.TakeBack("PUM").Of("PUM").Count);
        Assert.Equal(["NUR-1", "GRO-1"], handed.Assign("YAF-1", "TNU").HandedBy("RYA").Select(stop => stop.Site));
        Assert.Empty(Plan.HandOver("RYA", "PUM").HandedBy("RYA"));
        Assert.Empty(handed.HandOver("PUM", "TNU").HandedBy("RYA"));
    }

    private static string[] SitesOf(DayPlan plan, string person) => [.. plan.Of(person).Select(stop => stop.Site)];
}
