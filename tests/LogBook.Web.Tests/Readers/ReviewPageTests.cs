using Bunit;
using LogBook.Application.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Review;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Tests.Readers;

public sealed class ReviewPageTests
{
    [Fact]
    public async Task SignOff_ChosenVisits_AsksOnceAndTheyLeaveTheList()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: ThreeVisitsAsync);
        var page = pages.Render<ReviewPage>("/review");
        Assert.Equal(3, page.FindAll(".review").Count);

        foreach (var i in Enumerable.Range(0, 2))
        {
            await page.FindAll(".review input")[i].ChangeAsync(true);
        }

        await page.FindAll("button").Single(button => button.TextContent == "Mark as reviewed (2)").ClickAsync();
        await page.Find("form.confirm").SubmitAsync();

        Assert.Single(page.FindAll(".review"));
        Assert.Equal("Reviewed: 2.", page.Find(".done-note").TextContent);
        Assert.Equal(2, await pages.Firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.Visits.CountAsync(visit => visit.State == VisitState.Reviewed)));
    }

    [Fact]
    public async Task Share_NotANumberOrNoReason_SaysWhatIsExpectedAndKeepsWhatWasTyped()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, Language.Spanish, ThreeVisitsAsync);
        var page = pages.Render<ReviewPage>("/review");

        await page.Find("#share").ChangeAsync("ciento dos");
        await page.FindAll("form.confirm")[^1].SubmitAsync();
        Assert.Contains("«ciento dos»; se espera un número de 0 a 100", page.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        await page.Find("#share").ChangeAsync("12,5");
        await page.FindAll("form.confirm")[^1].SubmitAsync();
        Assert.Equal("12,5", page.Find("#share").GetAttribute("value"));
        await page.Find("#share-why").ChangeAsync("técnico nuevo");
        await page.FindAll("form.confirm")[^1].SubmitAsync();

        Assert.Equal(0.125, await pages.Firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.Firm.Select(firm => firm.AuditShare).SingleAsync()));
        Assert.Contains("12,5\u00a0%", page.Find("section[aria-labelledby=sampling]").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task List_Technician_SeesNothing()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ThreeVisitsAsync);

        Assert.Empty(pages.Render<ReviewPage>("/review").FindAll(".review"));
    }

    private static async Task<int?> ThreeVisitsAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddAsync(new FirmRow { Name = "Quernwath", CreatedAt = ReadingFirm.Start, AuditShare = 0 });
        foreach (var i in Enumerable.Range(1, 3))
        {
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(400 - (7 * i)), 1350));
        }

        return site.Customer;
    }
}
