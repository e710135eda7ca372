using Bunit;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Help;
using LogBook.Web.Features.Visits;

namespace LogBook.Web.Tests.Readers;

public sealed class VisitPagesTests
{
    private static readonly Guid Id = Guid.Parse("01955b40-5e60-7c77-9a57-0a6f8a0d2a11");

    [Fact]
    public async Task Visit_Customer_SeesReadingsAndNeitherActsNorVersions()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: OneVisitAsync);

        var page = pages.Render<VisitPage>($"/visits/{Id}", ("Id", Id));

        Assert.Contains("1350\u00a0µS/cm", page.Markup.Replace("&nbsp;", "\u00a0", StringComparison.Ordinal).Replace("&#160;", "\u00a0", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".visit-acts"));
        Assert.Empty(page.FindAll("#versions"));
        Assert.DoesNotContain("/amend", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Visits_EachState_IsSaid()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneVisitAsync);

        Assert.Contains("Closed", Assert.Single(pages.Render<VisitsPage>("/visits").FindAll("tbody tr")).TextContent, StringComparison.Ordinal);
        Assert.Equal("Nothing matches these filters", pages.Render<VisitsPage>("/visits?kind=cleaning").Find(".empty-title").TextContent);
    }

    [Fact]
    public async Task Visit_Unknown_IsAbsent()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneVisitAsync);
        var other = Guid.CreateVersion7();

        Assert.Equal("Nothing here", pages.Render<VisitPage>($"/visits/{other}", ("Id", other)).Find("h1").TextContent);
    }

    [Theory]
    [InlineData("")]
    [InlineData("attention?kind=feed-low")]
    [InlineData("attention/finding?kind=feed-low")]
    [InlineData("sites")]
    [InlineData("sites/YAF-1")]
    [InlineData("sites/YAF-1/systems/CT-1")]
    [InlineData("sites/YAF-1/systems/CT-1/sheet")]
    [InlineData("visits")]
    [InlineData("visits/01955b40-5e60-7c77-9a57-0a6f8a0d2a11")]
    [InlineData("search?q=x")]
    public void Help_OfEachPage_IsThereInThreeLanguages(string address)
    {
        var key = HelpPages.PathFor(address);

        var page = HelpPages.Find(key["/help/".Length..]);

        Assert.NotNull(page);
        Assert.All(page.Paragraphs, text => Assert.All(new[] { text.En, text.Es, text.Pt }, words => Assert.False(string.IsNullOrWhiteSpace(words))));
    }

    private static async Task<int?> OneVisitAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350, id: Id));
        return site.Customer;
    }
}
