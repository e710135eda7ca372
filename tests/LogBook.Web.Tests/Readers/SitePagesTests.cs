using Bunit;
using LogBook.Domain.Findings;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Round;
using LogBook.Web.Features.Search;
using LogBook.Web.Features.Sites;

namespace LogBook.Web.Tests.Readers;

public sealed class SitePagesTests
{
    [Fact]
    public async Task Sites_Supervisor_SeesDueDayAndFindings()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: TwoSitesAsync);

        var page = pages.Render<SitesPage>("/sites");

        Assert.Equal(2, page.FindAll("tbody tr").Count);
        var first = page.Find("tbody tr");
        Assert.Contains("YAF-1", first.TextContent, StringComparison.Ordinal);
        Assert.Contains("3 days over", first.TextContent, StringComparison.Ordinal);
        Assert.Contains("1 Plan", first.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Sites_Customer_SeesOwnSiteAndNoFindings()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: TwoSitesAsync);

        var page = pages.Render<SitesPage>("/sites");

        Assert.Single(page.FindAll("tbody tr"));
        Assert.DoesNotContain("NUR-1", page.Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("Open findings", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Sites_NothingMatches_OffersAllAgain()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: TwoSitesAsync);

        Assert.Equal("/sites", pages.Render<SitesPage>("/sites?q=zzz").Find(".empty a").GetAttribute("href"));
    }

    [Fact]
    public async Task Sites_None_SaysWhereTheyComeFrom()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor);

        Assert.Equal("No site yet", pages.Render<SitesPage>("/sites").Find(".empty-title").TextContent);
    }

    [Fact]
    public async Task Card_Technician_MayStartAVisit()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: TwoSitesAsync);

        var page = pages.Render<SiteCardPage>("/sites/YAF-1", ("Code", "YAF-1"));

        Assert.Equal("/visit/YAF-1", page.Find(".page-actions a").GetAttribute("href"));
        Assert.Contains("/sites/YAF-1/systems/CT-1/sheet", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Card_ForeignCustomer_IsAbsentAndOwnHasNoContactsOrStart()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: TwoSitesAsync);

        Assert.Equal("Nothing here", pages.Render<SiteCardPage>("/sites/NUR-1", ("Code", "NUR-1")).Find("h1").TextContent);
        var own = pages.Render<SiteCardPage>("/sites/YAF-1", ("Code", "YAF-1"));
        Assert.Empty(own.FindAll("#contacts"));
        Assert.Empty(own.FindAll("#findings"));
        Assert.DoesNotContain("/visit/YAF-1", own.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Round_Technician_SeesOwnSitesDueFirst()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: TwoSitesAsync);

        var page = pages.Render<RoundPage>("/");

        Assert.Contains("YAF-1", Assert.Single(page.FindAll(".stop")).TextContent, StringComparison.Ordinal);
        Assert.Contains("Since you were here", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Round_Customer_IsSentToTheSites()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: TwoSitesAsync);

        pages.Render<RoundPage>("/");

        Assert.EndsWith("/sites", pages.Navigation.Uri, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/search?q=y", ".empty-title", "Type at least two signs")]
    [InlineData("/search?q=qqq", ".empty-title", "Nothing found for “qqq”")]
    [InlineData("/search?q=yaf-1", "h2", "Sites")]
    public async Task Search_EachState_IsSaid(string address, string where, string said)
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: TwoSitesAsync);

        Assert.Equal(said, pages.Render<SearchPage>(address).Find(where).TextContent);
    }

    private static async Task<int?> TwoSitesAsync(ReadingFirm firm)
    {
        var today = firm.Clock.GetUtcNow().UtcDateTime;
        var own = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(own, ReadingFirm.VisitOf("YAF-1", today.AddDays(-10), 1350));
        await firm.AddFindingAsync(own, FindingKinds.WaterLoss, Severity.Plan, new DateOnly(2026, 4, 1));
        await firm.AddSiteAsync("NUR-1", "Nurlescombe General Hospital", assignedTo: "PUM");
        return own.Customer;
    }
}
