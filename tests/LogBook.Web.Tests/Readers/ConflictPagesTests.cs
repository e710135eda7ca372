using Bunit;
using LogBook.Application.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Visits;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Tests.Readers;

public sealed class ConflictPagesTests
{
    private static readonly Visit Standing = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
    private static readonly Visit Other = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1530, id: Standing.Id);

    [Fact]
    public async Task Visits_ConflictWaits_IsSaidToSupervisorsOnly()
    {
        await using var supervisor = await ReadPages.ForAsync(PersonRole.Supervisor, fill: OneConflictAsync);
        await using var technician = await ReadPages.ForAsync(PersonRole.Technician, fill: OneConflictAsync);

        Assert.Equal("/visits/conflicts", supervisor.Render<Web.Features.Visits.VisitsPage>("/visits").Find("p.problems a").GetAttribute("href"));
        Assert.Empty(technician.Render<Web.Features.Visits.VisitsPage>("/visits").FindAll("p.problems"));
        Assert.Empty(technician.Render<ConflictsPage>("/visits/conflicts").FindAll(".rows li"));
    }

    [Fact]
    public async Task Conflict_InSpanish_ShowsBothSidesInWords()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, Language.Spanish, OneConflictAsync);
        Assert.Contains("YAF-1", Assert.Single(pages.Render<ConflictsPage>("/visits/conflicts").FindAll(".rows li")).TextContent, StringComparison.Ordinal);

        var page = pages.Render<ConflictPage>("/visits/conflicts/1", ("Id", 1));

        Assert.Equal(["1350\u00a0µS/cm", "1530\u00a0µS/cm"], page.FindAll("tbody td").Select(cell => cell.TextContent));
        Assert.Contains("Lo que consta", page.Find("thead").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Conflict_Settled_AsksForAReasonFirst()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: OneConflictAsync);
        var page = pages.Render<ConflictPage>("/visits/conflicts/1", ("Id", 1));

        await page.FindAll(".page-actions button").Single(button => button.TextContent == "Keep what stands").ClickAsync();
        await page.Find("form").SubmitAsync();
        Assert.Equal("A reason is needed.", page.Find("[role=alert]").TextContent);
        Assert.Null(await SettledAsync(pages));

        await page.Find("#why").ChangeAsync("typed twice");
        await page.Find("form").SubmitAsync();

        page.WaitForAssertion(() => Assert.Contains("Settled.", page.Find("[role=status]").TextContent, StringComparison.Ordinal));
        Assert.Equal(nameof(ConflictChoice.KeepStanding), await SettledAsync(pages));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Conflict_Customer_SeesNothing()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: OneConflictAsync);

        Assert.Equal("Nothing here", pages.Render<ConflictPage>("/visits/conflicts/1", ("Id", 1)).Find("h1").TextContent);
    }

    private static Task<string?> SettledAsync(ReadPages pages) =>
        pages.Firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.Conflicts.Select(conflict => conflict.SettledHow).SingleAsync());

    private static async Task<int?> OneConflictAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        var row = await firm.AddVisitAsync(site, Standing);
        var canonical = VisitDocument.Canonical(Other);
        await firm.AddAsync(new ConflictRow
        {
            CustomerId = site.Customer, VisitRowId = row, VisitId = Standing.Id, VisitVersion = 1, Document = canonical, Sha256 = VisitDocument.Sha256OfCanonical(canonical),
            ReceivedAt = ReadingFirm.Start.AddHours(2), Source = IntakeSource.Tablet, Who = "R. Yaffle",
        });
        return site.Customer;
    }
}
