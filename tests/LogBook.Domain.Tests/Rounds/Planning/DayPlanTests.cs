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

    private static string[] SitesOf(DayPlan plan, string person) => [.. plan.Of(person).Select(stop => stop.Site)];
}
