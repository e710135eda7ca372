using Bunit;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.RecordPacks;
using LogBook.Web.Tests.Readers;

namespace LogBook.Web.Tests.RecordPacks;

public sealed class KeepingPageTests
{
    [Fact]
    [Trait("goal", "record-pack")]
    public async Task List_OldRecords_StandApartAndNothingOffersToDeleteThem()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);

        var page = pages.Render<KeepingPage>("/records/keeping");

        var tables = page.FindAll("table");
        Assert.Contains("AAA-1", tables[0].TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("BBB-1", tables[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("20 years from the last entry: OXT-LEG", tables[1].TextContent, StringComparison.Ordinal);
        Assert.Contains("LogBook does not delete these records", page.Find(".caution").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("main button, section button"));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task List_Technician_IsNotThere()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);

        Assert.Empty(pages.Render<KeepingPage>("/records/keeping").FindAll("table"));
    }

    private static async Task<int?> FillAsync(ReadingFirm firm)
    {
        var old = new DateTime(2012, 3, 5, 9, 0, 0, DateTimeKind.Utc);
        await firm.AddRuleAsync(new Rule { Code = "OXT-LEG", Name = "Oxterhelm Code, Legionella", From = new DateOnly(2010, 1, 1), KeepYears = 20 });
        foreach (var code in new[] { "AAA-1", "BBB-1" })
        {
            var site = await firm.AddSiteAsync(code);
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf(code, old, 1350));
            await firm.SetRulesAsync(site, code == "BBB-1" ? ["OXT-LEG"] : []);
        }

        return null;
    }
}
