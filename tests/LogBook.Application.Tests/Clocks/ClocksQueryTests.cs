using LogBook.Application.Clocks;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Clocks;

public sealed class ClocksQueryTests
{
    private static readonly DateTime Now = ReadingFirm.Start.AddDays(400);

    [Fact]
    public async Task List_RulesAndVisits_MostUrgentFirstAndMetOnesOnlyWhenAskedFor()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await AddRuleAsync(firm);
        var yaf = await firm.AddSiteAsync("YAF-1", everyDays: 28);
        var nur = await firm.AddSiteAsync("NUR-1", everyDays: 7, assignedTo: "PUM");
        await firm.AddVisitAsync(yaf, ReadingFirm.VisitOf("YAF-1", Now.AddDays(-3), 1350));
        await firm.AddVisitAsync(nur, ReadingFirm.VisitOf("NUR-1", Now.AddDays(-30), 1350));
        await KeepAsync(firm, yaf, Clock(DutyKind.Interval, dueIn: 40), Clock(DutyKind.Notify, dueIn: 0.1), Clock(DutyKind.AfterEvent, dueIn: -9) with { IsMet = true });
        await KeepAsync(firm, nur, Clock(DutyKind.Interval, dueIn: -2));

        var list = (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter()))!;

        Assert.Equal(
            [
                ("NUR-1", DutyKind.Visit, ClockStanding.Missed), ("NUR-1", DutyKind.Interval, ClockStanding.Missed), ("YAF-1", DutyKind.Notify, ClockStanding.DueSoon),
                ("YAF-1", DutyKind.Visit, ClockStanding.Running), ("YAF-1", DutyKind.Interval, ClockStanding.Running),
            ],
            list.Rows.Select(line => (line.Site, line.Clock.Kind, line.Standing)));
        Assert.Equal("Oxterhelm Code, dip slide", list.Rows[1].Rule!.Name);
        var met = Assert.Single((await Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter(Standing: ClockStanding.Met)))!.Rows);
        Assert.Equal(DutyKind.AfterEvent, met.Clock.Kind);
        Assert.Equal(["NUR-1"], (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter(Person: "PUM")))!.Rows.Select(line => line.Site).Distinct());
        Assert.Equal([DutyKind.Notify], (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter(Site: "yaf-1", Kind: DutyKind.Notify)))!.Rows.Select(line => line.Clock.Kind));
        Assert.Null(await Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter(Site: "ZZZ-1")));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task List_Customer_SeesNothing()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var own = await firm.AddSiteAsync("YAF-1");
        await KeepAsync(firm, own, Clock(DutyKind.Interval, dueIn: 40));

        Assert.Null(await Query(firm).ListAsync(ReadingFirm.CustomerOf(own.Customer), new ClocksFilter()));
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task List_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await AddRuleAsync(firm);
        await KeepAsync(firm, await firm.AddSiteAsync("AAA-0"), Clock(DutyKind.Interval, dueIn: 4));
        var few = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter()));
        for (var i = 1; i < 10; i++)
        {
            var site = await firm.AddSiteAsync($"AAA-{i}");
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf($"AAA-{i}", ReadingFirm.Start, 1350));
            await KeepAsync(firm, site, [.. Enumerable.Range(0, 30).Select(day => Clock(DutyKind.Interval, dueIn: day))]);
        }

        var many = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter()));
        var list = (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ClocksFilter()))!;

        // The set-up is read anew by each query object of the test; in the program it is kept.
        Assert.Equal(few, many);
        Assert.InRange(many, 1, 12);
        Assert.Equal(ClocksQuery.PageSize, list.Rows.Count);
        Assert.Equal((9 * 30) + 1 + 9, list.Total);
    }

    private static RunningClock Clock(DutyKind kind, double dueIn) => new(kind, Now.AddDays(dueIn - 30), Now.AddDays(dueIn - 1), Now.AddDays(dueIn), 30)
    {
        Rule = "OXT-DIP", RuleFrom = new DateOnly(2024, 7, 1), LastDone = Now.AddDays(dueIn - 30),
    };

    private static Task KeepAsync(ReadingFirm firm, (int Customer, int Site, int System) at, params RunningClock[] clocks) => firm.AddAsync(KeptClocks.Row(
        new SystemRow { Id = at.System, CustomerId = at.Customer }, new SystemAssessment("", "", Now, "1", [], []) { Clocks = clocks }));

    private static Task AddRuleAsync(ReadingFirm firm) => firm.AddAsync(new SetUpRow
    {
        Kind = SetUpKind.Rule, Code = "OXT-DIP", CodeKey = "OXT-DIP", From = new DateOnly(2024, 7, 1), Name = "Oxterhelm Code, dip slide",
        Document = ExchangeWriter.CanonicalOf(new Rule { Code = "OXT-DIP", Name = "Oxterhelm Code, dip slide", From = new DateOnly(2024, 7, 1), Test = TestCodes.DipSlide, EveryDays = 30 }),
    });

    private static ClocksQuery Query(ReadingFirm firm) => new(firm.Store, new SetUpStore(firm.Store, firm.Clock), new SitesQuery(firm.Store, firm.Clock), firm.Clock);
}
