using LogBook.Application.Data;
using LogBook.Application.RecordPacks;
using LogBook.Application.Sites;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.RecordPacks;

[Trait("goal", "record-pack")]
public sealed class KeepingQueryTests
{
    private static readonly DateTime Old = new(2012, 3, 5, 9, 0, 0, DateTimeKind.Utc);

    [Fact]
    public async Task ListAsync_OldSites_ByRuleByDefaultAndHeld()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddRuleAsync(new Rule { Code = "OXT-LEG", Name = "Oxterhelm Code, Legionella", From = new DateOnly(2010, 1, 1), KeepYears = 20 });
        var (plain, ruled, held) = (await firm.AddSiteAsync("AAA-1"), await firm.AddSiteAsync("BBB-1"), await firm.AddSiteAsync("CCC-1"));
        await firm.SetRulesAsync(ruled, "OXT-LEG");
        foreach (var (site, code) in new[] { (plain, "AAA-1"), (ruled, "BBB-1"), (held, "CCC-1") })
        {
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf(code, Old, 1350));
        }

        Assert.IsType<SaveOutcome.Saved>(await new LegalHoldStore(firm.Store, firm.Clock).SetAsync(ReadingFirm.Supervisor, "CCC-1", true, "claim 7", 0));

        var list = (await Query(firm).ListAsync(ReadingFirm.Supervisor))!;

        Assert.Equal(["AAA-1", "BBB-1", "CCC-1"], list.Select(site => site.Site));
        Assert.Equal([true, false, false], list.Select(site => site.IsOver));
        Assert.Equal([new DateOnly(2017, 3, 5), new DateOnly(2032, 3, 5), null], list.Select(site => site.Keeping.Until));
        Assert.Equal(
            ["5 Mar 2017 (five years from the last entry)", "5 Mar 2032 (20 years from the last entry: OXT-LEG, Oxterhelm Code, Legionella)", "until the legal hold is lifted"],
            list.Select(site => KeepTexts.ReasonOf(site.Keeping, Language.English)));
        Assert.Equal("claim 7", list[2].Hold!.Why);

        // The pack of a site says the same.
        var preview = (await new RecordPackReader(firm.Store, new SetUpStore(firm.Store, firm.Clock), firm.Clock).PreviewAsync(ReadingFirm.Supervisor, "BBB-1", null, null))!;
        Assert.Equal((20.0, new DateOnly(2032, 3, 5)), (preview.Keeping!.Years, preview.Keeping.Until));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task ListAsync_TechnicianOrCustomer_SeesNothing()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("AAA-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("AAA-1", Old, 1350));

        Assert.Null(await Query(firm).ListAsync(ReadingFirm.Technician));
        Assert.Null(await Query(firm).ListAsync(ReadingFirm.CustomerOf(site.Customer)));
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task ListAsync_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        async Task AddAsync(int number) => await firm.AddVisitAsync(await firm.AddSiteAsync($"AAA-{number}"), ReadingFirm.VisitOf($"AAA-{number}", Old, 1350));
        await AddAsync(0);
        var few = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor));
        for (var i = 1; i < 10; i++)
        {
            await AddAsync(i);
        }

        Assert.Equal(few, await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor)));
        Assert.InRange(few, 3, 9);
    }

    private static KeepingQuery Query(ReadingFirm firm) => new(firm.Store, new SetUpStore(firm.Store, firm.Clock), firm.Clock);
}
