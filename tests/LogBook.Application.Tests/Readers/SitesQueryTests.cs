using LogBook.Application.DueLists;
using LogBook.Testing.Readers;
using LogBook.Domain.Findings;
using LogBook.Domain.Visits;

namespace LogBook.Application.Tests.Readers;

public sealed class SitesQueryTests
{
    [Fact]
    public async Task ListAsync_Always_IsDueFirstByTheIntervalSinceTheLastVisit()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var today = firm.Clock.GetUtcNow().UtcDateTime;
        var weekly = await firm.AddSiteAsync("YAF-1", everyDays: 7);
        var monthly = await firm.AddSiteAsync("NUR-1", everyDays: 28);
        await firm.AddVisitAsync(weekly, ReadingFirm.VisitOf("YAF-1", today.AddDays(-5), 1350));
        await firm.AddVisitAsync(monthly, ReadingFirm.VisitOf("NUR-1", today.AddDays(-40), 1350));
        await firm.AddVisitAsync(monthly, ReadingFirm.VisitOf("NUR-1", today.AddDays(-1), 1350) with { Kind = VisitKind.Delivery });

        var list = await Query(firm).ListAsync(ReadingFirm.Supervisor);

        Assert.Equal([("NUR-1", -12, true), ("YAF-1", 2, false)], list.Select(site => (site.Code, site.DueInDays!.Value, site.IsLate)));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task ListAsync_Customer_SeesOwnSitesWithoutFindings()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var own = await firm.AddSiteAsync("YAF-1");
        await firm.AddSiteAsync("NUR-1");
        await firm.AddFindingAsync(own, FindingKinds.WaterLoss, Severity.Plan, new DateOnly(2026, 1, 1));

        var site = Assert.Single(await Query(firm).ListAsync(ReadingFirm.CustomerOf(own.Customer)));

        Assert.Equal("YAF-1", site.Code);
        Assert.Equal(0, site.Open.Total);
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task ListAsync_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddSiteAsync("AAA-0");
        var few = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor));
        for (var i = 1; i < 10; i++)
        {
            var site = await firm.AddSiteAsync($"AAA-{i}");
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf($"AAA-{i}", ReadingFirm.Start, 1350));
        }

        var many = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor));

        Assert.Equal(few, many);
        Assert.InRange(many, 1, 8);
    }

    [Fact]
    public async Task CardOfAsync_ActionClosedLater_IsNotOpenAnyMore()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var (closed, open) = (Guid.CreateVersion7(), Guid.CreateVersion7());
        Visit With(DateTime at, params VisitAction[] actions)
        {
            var visit = ReadingFirm.VisitOf("YAF-1", at, 1350);
            return visit with { Systems = [visit.Systems[0] with { Actions = actions }] };
        }

        await firm.AddVisitAsync(site, With(
            ReadingFirm.Start,
            new VisitAction { Id = closed, Text = "clean basin", State = ActionState.Open },
            new VisitAction { Id = open, Text = "renew gasket", State = ActionState.Open }));
        await firm.AddVisitAsync(site, With(ReadingFirm.Start.AddDays(7), new VisitAction { Id = closed, Text = "clean basin", State = ActionState.Done }));

        var card = await new SiteCardQuery(firm.Store, firm.Clock).OfAsync(ReadingFirm.Technician, "YAF-1");

        Assert.Equal(["renew gasket"], card!.Actions.Select(action => action.Text));
        Assert.Equal(new DateOnly(2025, 3, 3), card.Actions[0].Since);
    }

    private static SitesQuery Query(ReadingFirm firm) => new(firm.Store, firm.Clock);
}
