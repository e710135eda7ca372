using Bunit;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Attention;

namespace LogBook.Web.Tests.Readers;

public sealed class AttentionPageTests
{
    private static readonly DateOnly Day = new(2026, 4, 1);

    [Fact]
    public async Task List_OneFinding_ShowsEvidenceAtAGlance()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention");

        Assert.Equal("Probe reads off", page.Find(".finding-title a").TextContent);
        Assert.Equal("as found against reference: -7.40 % (-11.5 to -3.30 %); limit -5.00 to 5.00 %", page.Find(".finding-evidence").TextContent);
        Assert.Contains("Plan", page.Find(".finding-mark").TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.Find(".finding-mark svg"));
    }

    [Fact]
    public async Task List_InSpanish_SpeaksSpanish()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, Language.Spanish, OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention");

        Assert.Equal("dicho en español", page.Find(".finding-text").TextContent);
        Assert.Contains("-7,40", page.Find(".finding-evidence").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task List_FilterInTheAddress_IsApplied()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention?severity=act");

        Assert.Equal("Nothing matches these filters", page.Find(".empty-title").TextContent);
    }

    [Fact]
    public async Task List_Nothing_SaysHowFindingsComeToBe()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor);

        Assert.Equal("Nothing needs attention", pages.Render<AttentionPage>("/attention").Find(".empty-title").TextContent);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task List_Customer_SeesNothingHere()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention");

        Assert.Equal("Nothing here", page.Find("h1").TextContent);
        Assert.Empty(page.FindAll(".finding"));
    }

    [Fact]
    public async Task Finding_Opened_ShowsTableAndLinks()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneFindingAsync);

        var page = pages.Render<FindingPage>("/attention/finding?site=YAF-1&system=CT-1&kind=probe-reads-off&seen=2026-04-01");

        Assert.Equal(["-7.40 %", "-11.5 to -3.30 %", "-5.00 to 5.00 %"], page.FindAll("td.figure").Select(cell => cell.TextContent));
        Assert.Contains(page.FindAll(".links a"), link => link.GetAttribute("href") == "/sites/YAF-1/systems/CT-1?from=2026-01-31&to=2026-05-01");
        Assert.Contains("% of the reference", page.Find("details dd").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Finding_Unknown_IsAbsent()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneFindingAsync);

        Assert.Equal("Nothing here", pages.Render<FindingPage>("/attention/finding?site=NUR-1&kind=probe-reads-off&seen=2026-04-01").Find("h1").TextContent);
    }

    private static async Task<int?> OneFindingAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddFindingAsync(site, FindingKinds.ProbeReadsOff, Severity.Plan, Day);
        return site.Customer;
    }
}
