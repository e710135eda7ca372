using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Planning;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using Microsoft.EntityFrameworkCore;
using static LogBook.Application.Tests.Readers.PlannedFirm;

namespace LogBook.Application.Tests.Readers;

public sealed class DaysOffTests
{
    private static readonly Viewer Umber = new(3, "P. Umber", "PUM", PersonRole.Technician, null, Language.English);

    [Fact]
    public async Task Leave_WithAStandIn_PutsTheSitesOnThatRoundForItsDaysOnly()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1");
        var today = Today(firm);
        Assert.Empty((await RoundOfAsync(firm, Umber)).Stops);

        Assert.IsType<SaveOutcome.Saved>(await Store(firm).SaveAsync(ReadingFirm.Technician, Leave("RYA", today, today.AddDays(2), "PUM"), 0));

        Assert.Equal([("NUR-1", "RYA"), ("YAF-1", "RYA")], (await RoundOfAsync(firm, Umber)).Stops.Select(stop => (stop.Site.Code, stop.InPlaceOf!)).Order());
        Assert.Equal(["NUR-1", "YAF-1"], (await new RoundQuery(firm.Store, SetUp(firm), firm.Clock).DocumentAsync(Umber)).Sites.Select(site => site.Code).Order(StringComparer.Ordinal));
        var plan = (await Query(firm).OfAsync(ReadingFirm.Supervisor, null, 7))!;
        Assert.Equal(["PUM", "PUM", "PUM", "RYA"], Enumerable.Range(0, 4).Select(days => plan.WhoGoes(plan.Open[0], today.AddDays(days))));

        firm.Clock.Advance(TimeSpan.FromDays(4));
        Assert.Empty((await RoundOfAsync(firm, Umber)).Stops);
        Assert.Equal(2, (await RoundOfAsync(firm, ReadingFirm.Technician)).Stops.Count);
    }

    [Fact]
    public async Task Lent_ChosenSites_AreOnTheColleaguesRoundAndTablet_AndGoBackByThemselves()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1", "GRO-1");
        var today = Today(firm);
        var lent = new DaysOff(DaysOffKind.Lent, "rya", today, today.AddDays(6)) { StandIn = "pum", Sites = ["yaf-1", "GRO-1"] };
        Assert.IsType<SaveOutcome.NotAllowed>(await Store(firm).SaveAsync(ReadingFirm.Technician, lent, 0));
        Assert.Equal(["standIn"], Assert.IsType<SaveOutcome.Invalid>(await Store(firm).SaveAsync(ReadingFirm.Supervisor, lent with { StandIn = null }, 0)).Issues.Select(issue => issue.Path));
        Assert.Equal(["sites"], Assert.IsType<SaveOutcome.Invalid>(await Store(firm).SaveAsync(ReadingFirm.Supervisor, lent with { Sites = ["ZZZ-9"] }, 0)).Issues.Select(issue => issue.Path));

        Assert.IsType<SaveOutcome.Saved>(await Store(firm).SaveAsync(ReadingFirm.Supervisor, lent, 0));

        Assert.Equal(["GRO-1", "YAF-1"], (await RoundOfAsync(firm, Umber)).Stops.Select(stop => stop.Site.Code).Order(StringComparer.Ordinal));
        Assert.Equal(["GRO-1", "YAF-1"], (await new RoundQuery(firm.Store, SetUp(firm), firm.Clock).DocumentAsync(Umber)).Sites.Select(site => site.Code).Order(StringComparer.Ordinal));
        Assert.Equal(
            [("GRO-1", "PUM"), ("NUR-1", null), ("YAF-1", "PUM")],
            (await RoundOfAsync(firm, ReadingFirm.Technician)).Stops.Select(stop => (stop.Site.Code, stop.GoneTo)).OrderBy(stop => stop.Code, StringComparer.Ordinal));
        Assert.Equal("GRO-1 RYA, NUR-1 RYA, YAF-1 RYA", await AssignedOfAsync(firm));

        firm.Clock.Advance(TimeSpan.FromDays(8));
        Assert.Empty((await RoundOfAsync(firm, Umber)).Stops);
        Assert.All((await RoundOfAsync(firm, ReadingFirm.Technician)).Stops, stop => Assert.Null(stop.GoneTo));
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task Pages_ManySites_TakeNoMoreStatements()
    {
        async Task<(int Plan, int Round, int Leave)> CountAsync(int sites)
        {
            var codes = Enumerable.Range(1, sites).Select(number => $"YAF-{number}").ToArray();
            await using var firm = await FirmAsync(codes);
            var today = Today(firm);
            await Store(firm).SaveAsync(ReadingFirm.Supervisor, Leave("RYA", today, today, "PUM"), 0);
            foreach (var code in codes)
            {
                await Store(firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Site, code, today.AddDays(1), today.AddDays(2)), 0);
            }

            var (query, days) = (Query(firm), Store(firm));
            Assert.Equal(sites, (await RoundOfAsync(firm, Umber)).Stops.Count);
            await query.OfAsync(ReadingFirm.Supervisor, null, 7);
            return (
                await firm.CountAsync(() => query.OfAsync(ReadingFirm.Supervisor, null, 7)),
                await firm.CountAsync(() => RoundOfAsync(firm, Umber)),
                await firm.CountAsync(() => days.ListAsync(ReadingFirm.Supervisor, today)));
        }

        var few = await CountAsync(2);
        Assert.Equal(few, await CountAsync(20));
        Assert.True(few is { Plan: > 0 and <= 9, Round: > 0 and <= 8, Leave: 1 }, few.ToString());
    }

    [Fact]
    public async Task Save_OverOrOfAnotherKindsReason_IsRefused()
    {
        await using var firm = await FirmAsync("YAF-1");
        var today = Today(firm);
        Task<SaveOutcome> SaveAsync(DaysOff off) => Store(firm).SaveAsync(ReadingFirm.Supervisor, off, 0);

        Assert.Equal("reason", Assert.Single(Assert.IsType<SaveOutcome.Invalid>(await SaveAsync(Leave("RYA", today, today) with { Reason = OffReason.PlantShut })).Issues).Path);
        Assert.Equal("to", Assert.Single(Assert.IsType<SaveOutcome.Invalid>(await SaveAsync(Leave("RYA", today.AddDays(-9), today.AddDays(-3)))).Issues).Path);
        Assert.IsType<SaveOutcome.Saved>(await SaveAsync(Leave("RYA", today, today) with { Reason = OffReason.Course }));
        var kept = Assert.Single(await Store(firm).ListAsync(ReadingFirm.Supervisor, today));
        Assert.Equal(OffReason.Course, kept.Off.Reason);

        firm.Clock.Advance(TimeSpan.FromDays(4));
        Assert.IsType<SaveOutcome.Invalid>(await Store(firm).TakeBackAsync(ReadingFirm.Supervisor, kept.Off, kept.Version));
        Assert.Single(await Store(firm).ListAsync(ReadingFirm.Supervisor, today));
    }

    [Fact]
    public async Task Save_ChangeAndTakeBack_AreAudited_AndAnOldVersionIsRefused()
    {
        await using var firm = await FirmAsync("YAF-1");
        var (store, today) = (Store(firm), Today(firm));
        var closed = new DaysOff(DaysOffKind.Site, "yaf-1", today.AddDays(3), today.AddDays(5)) { Note = " works on the roof " };

        var version = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(ReadingFirm.Supervisor, closed, 0)).Version;
        Assert.IsType<SaveOutcome.ChangedMeanwhile>(await store.SaveAsync(ReadingFirm.Supervisor, closed, 0));
        var changed = Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(ReadingFirm.Supervisor, closed with { To = today.AddDays(9) }, version)).Version;
        Assert.IsType<SaveOutcome.ChangedMeanwhile>(await store.TakeBackAsync(ReadingFirm.Supervisor, closed, version));
        var kept = Assert.Single(await store.ListAsync(ReadingFirm.Technician, today));
        Assert.Equal(("YAF-1", today.AddDays(9), "works on the roof", changed), (kept.Off.Of!, kept.Off.To, kept.Off.Note!, kept.Version));

        Assert.IsType<SaveOutcome.Saved>(await store.TakeBackAsync(ReadingFirm.Supervisor, kept.Off, kept.Version));
        Assert.Empty(await store.ListAsync(ReadingFirm.Supervisor, today));
        Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(ReadingFirm.Supervisor, kept.Off, 0));

        Assert.Single(await store.ListAsync(ReadingFirm.Supervisor, today));
        var trail = await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.AuditTrail.Where(row => row.Entity == "DaysOff").OrderBy(row => row.Id).Select(row => row.What).ToListAsync());
        Assert.Equal([AuditActs.Added, AuditActs.Changed, AuditActs.Retired, AuditActs.Added], trail);
    }

    [Fact]
    public async Task Save_NotWhole_NamesEachField()
    {
        await using var firm = await FirmAsync("YAF-1");
        var today = Today(firm);
        IEnumerable<string> Paths(SaveOutcome outcome) => Assert.IsType<SaveOutcome.Invalid>(outcome).Issues.Select(issue => issue.Path);

        Assert.Equal(["of", "to"], Paths(await Store(firm).SaveAsync(ReadingFirm.Supervisor, Leave("NOBODY", today, today.AddDays(-1)), 0)));
        Assert.Equal(["standIn"], Paths(await Store(firm).SaveAsync(ReadingFirm.Supervisor, Leave("RYA", today, today, "rya"), 0)));
        Assert.Equal(["to"], Paths(await Store(firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Firm, null, today, today.AddDays(366)), 0)));
        Assert.Equal(["of", "note"], Paths(await Store(firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Site, "ZZZ-9", today, today) { Note = new string('x', 201) }, 0)));
        Assert.Empty(await Store(firm).ListAsync(ReadingFirm.Supervisor, today));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Save_TechnicianOfOthersOrOfTheFirm_AndCustomers_AreRefused()
    {
        await using var firm = await FirmAsync("YAF-1");
        var (store, today) = (Store(firm), Today(firm));
        var customer = ReadingFirm.CustomerOf(1);

        Assert.IsType<SaveOutcome.NotAllowed>(await store.SaveAsync(ReadingFirm.Technician, Leave("PUM", today, today), 0));
        Assert.IsType<SaveOutcome.NotAllowed>(await store.SaveAsync(ReadingFirm.Technician, new DaysOff(DaysOffKind.Firm, null, today, today), 0));
        Assert.IsType<SaveOutcome.NotAllowed>(await store.SaveAsync(customer, Leave("RYA", today, today), 0));
        Assert.IsType<SaveOutcome.Saved>(await store.SaveAsync(ReadingFirm.Technician, Leave("RYA", today, today), 0));
        Assert.IsType<SaveOutcome.NotAllowed>(await store.TakeBackAsync(Umber, Leave("RYA", today, today), 1));
        Assert.Empty(await store.ListAsync(customer, today));
        Assert.IsType<SaveOutcome.NotAllowed>(await Patches(firm).HandOverAsync(ReadingFirm.Technician, "RYA", "PUM", ["YAF-1"]));
    }

    [Fact]
    public async Task Patch_ForGood_ChangesTheSetUpOfAllOrNone_AndGoesBack()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1", "GRO-1");
        Task<string> AssignedAsync() => AssignedOfAsync(firm);

        Assert.IsType<SaveOutcome.Saved>(await Patches(firm).HandOverAsync(ReadingFirm.Supervisor, "RYA", "pum", ["YAF-1", "nur-1"]));
        Assert.Equal("GRO-1 RYA, NUR-1 PUM, YAF-1 PUM", await AssignedAsync());
        Assert.Equal(["NUR-1", "YAF-1"], (await RoundOfAsync(firm, Umber)).Stops.Select(stop => stop.Site.Code).Order(StringComparer.Ordinal));

        // One of them is somebody else's by now: none moves.
        var refused = Assert.IsType<SaveOutcome.Invalid>(await Patches(firm).HandOverAsync(ReadingFirm.Supervisor, "RYA", "IWE", ["GRO-1", "YAF-1"]));
        Assert.Contains("YAF-1", Assert.Single(refused.Issues).Message, StringComparison.Ordinal);
        Assert.Equal("GRO-1 RYA, NUR-1 PUM, YAF-1 PUM", await AssignedAsync());

        Assert.IsType<SaveOutcome.Saved>(await Patches(firm).HandOverAsync(ReadingFirm.Supervisor, "PUM", "RYA", ["YAF-1", "NUR-1"]));
        Assert.Equal("GRO-1 RYA, NUR-1 RYA, YAF-1 RYA", await AssignedAsync());
        Assert.Equal("sites", Assert.Single(Assert.IsType<SaveOutcome.Invalid>(await Patches(firm).HandOverAsync(ReadingFirm.Supervisor, "RYA", "PUM", [])).Issues).Path);
        Assert.Equal("to", Assert.Single(Assert.IsType<SaveOutcome.Invalid>(await Patches(firm).HandOverAsync(ReadingFirm.Supervisor, "RYA", "EST", ["YAF-1"])).Issues).Path);
        Assert.Equal(4, await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.AuditTrail.CountAsync(row => row.Entity == "Site")));
    }

    [Fact]
    public async Task Patch_OfSomebodyWhoLeft_NeedsSomebody_AndTheyTakeNothingOver()
    {
        await using var firm = await FirmAsync("YAF-1");
        await firm.Store.WriteAsync(Viewer.System("test"), async db =>
        {
            (await db.SetUp.AsTracking().SingleAsync(row => row.Kind == SetUpKind.Person && row.CodeKey == "RYA")).RetiredAt = firm.Clock.GetUtcNow().UtcDateTime;
            await db.Firm.ExecuteUpdateAsync(set => set.SetProperty(row => row.SetUpStamp, row => row.SetUpStamp + 1));
        });

        var plan = (await Query(firm).OfAsync(ReadingFirm.Supervisor, null, 1))!;

        Assert.Null(plan.WhoGoes(Assert.Single(plan.Open), plan.Today));
        Assert.DoesNotContain(plan.People, person => person.Code == "RYA");
        Assert.IsType<SaveOutcome.Saved>(await Patches(firm).HandOverAsync(ReadingFirm.Supervisor, "RYA", "PUM", ["YAF-1"]));
        Assert.IsType<SaveOutcome.Invalid>(await Patches(firm).HandOverAsync(ReadingFirm.Supervisor, "PUM", "RYA", ["YAF-1"]));
    }

    [Fact]
    public async Task Plan_ClosedSite_IsProposedForTheLastOpenDayBefore()
    {
        await using var firm = await FirmAsync("YAF-1");
        var today = Today(firm);
        var site = await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.Sites.SingleAsync(row => row.Code == "YAF-1"));

        // Every seven days, last visit four days ago: due in three days, when the site is shut.
        await firm.AddVisitAsync((site.CustomerId, site.Id, 0), ReadingFirm.VisitOf("YAF-1", firm.Clock.GetUtcNow().UtcDateTime.AddDays(-4), 1350));
        await Store(firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Site, "YAF-1", today.AddDays(2), today.AddDays(4)), 0);

        var plan = (await Query(firm).OfAsync(ReadingFirm.Supervisor, null, 7))!;

        var open = Assert.Single(plan.Open);
        Assert.Equal((today.AddDays(3), today.AddDays(1)), (open.UrgentOn!.Value, plan.ProposedFor(open)!.Value));
    }

    private static DaysOff Leave(string person, DateOnly from, DateOnly to, string? standIn = null) => new(DaysOffKind.Person, person, from, to) { StandIn = standIn };

    private static async Task<Round> RoundOfAsync(ReadingFirm firm, Viewer viewer) => (await new TodaysRoundQuery(firm.Store, new(firm.Store, firm.Clock), firm.Clock).OfAsync(viewer))!;

    private static async Task<string> AssignedOfAsync(ReadingFirm firm) => string.Join(
        ", ", (await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.Sites.OrderBy(site => site.Code).Select(site => new { site.Code, site.AssignedTo }).ToListAsync())).Select(site => $"{site.Code} {site.AssignedTo}"));

    private static DaysOffStore Store(ReadingFirm firm) => new(firm.Store, SetUp(firm), firm.Clock);

    private static PatchStore Patches(ReadingFirm firm) => new(firm.Store, SetUp(firm), firm.Clock);
}
