using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Planning;
using LogBook.Application.Sites;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using Microsoft.EntityFrameworkCore;
using static LogBook.Application.Tests.Readers.PlannedFirm;

namespace LogBook.Application.Tests.Readers;

public sealed class PlanTests
{
    private static readonly Viewer OtherTechnician = ReadingFirm.Technician with { UserId = 3, Who = "P. Umber", PersonCode = "PUM" };

    [Fact]
    public async Task Assign_Supervisor_IsKeptWithVersionAndAudit()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1");
        var plans = Plans(firm);

        Assert.Equal(new SaveOutcome.Saved(1), await plans.AssignAsync(ReadingFirm.Supervisor, Today(firm), "YAF-1", "RYA", 0));
        Assert.Equal(new SaveOutcome.Saved(2), await plans.AssignAsync(ReadingFirm.Supervisor, Today(firm), "NUR-1", "RYA", 1));

        var kept = (await plans.DaysAsync(ReadingFirm.Technician, Today(firm), Today(firm)))[Today(firm)];
        Assert.Equal(2, kept.Version);
        Assert.Equal(["YAF-1", "NUR-1"], kept.Plan.Of("RYA").Select(stop => stop.Site));
        var audit = await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.AuditTrail.Where(row => row.Entity == "DayPlan").OrderBy(row => row.Id).ToListAsync());
        Assert.Equal([("added", null), ("changed", audit[0].New)], audit.Select(row => (row.What, row.Old)));
        Assert.Equal(["I. Wendle", "I. Wendle"], (await plans.StepsAsync(ReadingFirm.Supervisor, Today(firm))).Select(step => step.Who));
    }

    [Fact]
    public async Task Arrange_UnplannedStops_IsTheOwnRoundOfTheDayAndNobodyElses()
    {
        await using var firm = await FirmAsync("AAA-1", "BBB-1", "CCC-1");
        var today = Today(firm);
        var rounds = new TodaysRoundQuery(firm.Store, SitesOf(firm), firm.Clock);
        async Task<IEnumerable<string>> RoundAsync(Viewer viewer) => (await rounds.OfAsync(viewer))!.Stops.Select(stop => stop.Site.Code);
        Assert.Equal(["AAA-1", "BBB-1", "CCC-1"], await RoundAsync(ReadingFirm.Technician));

        Assert.Equal(new SaveOutcome.Saved(1), await Plans(firm).ArrangeAsync(ReadingFirm.Technician, today, ["AAA-1", "BBB-1", "CCC-1"], "CCC-1", -1, 0));

        Assert.Equal(["AAA-1", "CCC-1", "BBB-1"], await RoundAsync(ReadingFirm.Technician));
        Assert.Equal(["AAA-1", "BBB-1", "CCC-1"], await RoundAsync(ReadingFirm.Supervisor));
        Assert.Equal(1, (await rounds.OfAsync(ReadingFirm.Technician))!.Stops[0].PlanVersion);

        // It holds for the day, stays beside what is planned later, and is not written over by who read an older version.
        Assert.IsType<SaveOutcome.ChangedMeanwhile>(await Plans(firm).ArrangeAsync(ReadingFirm.Technician, today, ["AAA-1", "BBB-1"], "BBB-1", -1, 0));
        Assert.Equal(new SaveOutcome.Saved(2), await Plans(firm).AssignAsync(ReadingFirm.Supervisor, today, "BBB-1", "RYA", 1));
        Assert.Equal(["BBB-1", "AAA-1", "CCC-1"], await RoundAsync(ReadingFirm.Technician));
        Assert.IsType<SaveOutcome.Invalid>(await Plans(firm).ArrangeAsync(ReadingFirm.Technician, today, ["AAA-1", "XXX-1"], "XXX-1", -1, 2));
        firm.Clock.Advance(TimeSpan.FromDays(1));
        Assert.Equal(["AAA-1", "BBB-1", "CCC-1"], await RoundAsync(ReadingFirm.Technician));
    }

    [Fact]
    public async Task Plan_VisitMade_TellsMinutesSpentBesideThoseNeeded()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1");
        var today = Today(firm);
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, today, [new PlannedStop("YAF-1", "RYA"), new PlannedStop("NUR-1", "RYA")], 0);
        var arrived = firm.Clock.GetUtcNow().UtcDateTime.Date.AddHours(9);
        await firm.AddVisitAsync(await firm.SystemAsync("YAF-1"), ReadingFirm.VisitOf("YAF-1", DateTime.SpecifyKind(arrived, DateTimeKind.Utc), 1350));

        var day = (await Query(firm).OfAsync(ReadingFirm.Supervisor, today, 1))!.Days.Single().People.Single();

        // A visit of the sample firm lasts 55 minutes.
        Assert.Equal([55.0, null], day.Stops.Select(stop => stop.Spent));
        Assert.Equal((55.0, day.Stops[0].Minutes), day.Made);
        Assert.True(day.Minutes > day.Made!.Value.Needed);
    }

    [Fact]
    public async Task Assign_ReadBeforeSomebodyElseChangedIt_IsNotWritten()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1");
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), "YAF-1", "RYA", 0);

        Assert.IsType<SaveOutcome.ChangedMeanwhile>(await Plans(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), "NUR-1", "RYA", 0));
        Assert.Single((await Plans(firm).DaysAsync(ReadingFirm.Supervisor, Today(firm), Today(firm)))[Today(firm)].Plan.Stops);
    }

    [Fact]
    public async Task Assign_UnknownSiteOrPersonOrDayOver_IsRefusedWithTheReason()
    {
        await using var firm = await FirmAsync("YAF-1");

        var unknown = Assert.IsType<SaveOutcome.Invalid>(await Plans(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), "XXX-1", "EST", 0));
        var over = Assert.IsType<SaveOutcome.Invalid>(await Plans(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm).AddDays(-2), "YAF-1", "RYA", 0));

        Assert.Equal(["site-unknown", "person-unknown"], unknown.Issues.Select(issue => issue.Code));
        Assert.Equal(["day-over"], over.Issues.Select(issue => issue.Code));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Change_WhoMayNot_ChangesNothing()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1");
        var day = Today(firm);
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, day, "YAF-1", "RYA", 0);
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, day, "NUR-1", "RYA", 1);
        var customer = ReadingFirm.CustomerOf(1);

        SaveOutcome[] outcomes =
        [
            await Plans(firm).AssignAsync(ReadingFirm.Technician, day, "YAF-1", "PUM", 2),
            await Plans(firm).TakeOffAsync(ReadingFirm.Technician, day, "YAF-1", 2),
            await Plans(firm).MoveAsync(OtherTechnician, day, "YAF-1", 1, 2),
            await Plans(firm).MoveAsync(customer, day, "YAF-1", 1, 2),
            await Plans(firm).HandOverAsync(OtherTechnician, day, "RYA", "PUM", null, 2),
        ];

        Assert.All(outcomes, outcome => Assert.IsType<SaveOutcome.NotAllowed>(outcome));
        Assert.Equal(2, (await Plans(firm).DaysAsync(ReadingFirm.Supervisor, day, day))[day].Version);
        Assert.Empty(await Plans(firm).DaysAsync(customer, day, day));
        Assert.Empty(await Plans(firm).StepsAsync(customer, day));
        Assert.Null(await Query(firm).OfAsync(customer, null, 7));
        Assert.Null(await Packs(firm).OfAsync(customer, day, "RYA"));
        Assert.Null(await Packs(firm).OfAsync(OtherTechnician, day, "RYA"));
    }

    [Fact]
    public async Task TakeBack_OwnDay_ComesBackUntilTheColleagueHasBegunAVisit()
    {
        await using var firm = await FirmAsync("YAF-1");
        var nurle = await firm.AddSiteAsync("NUR-1");
        var (day, plans) = (Today(firm), Plans(firm));
        await plans.AssignAsync(ReadingFirm.Supervisor, day, [new("YAF-1", "RYA"), new("NUR-1", "RYA")], 0);
        async Task<IEnumerable<string>> HandedAsync(Viewer viewer) => (await Query(firm).OfAsync(viewer, day, 1))!.Days[0].HandedAway.Select(stop => $"{stop.Site} {stop.Person}");

        Assert.Equal(new SaveOutcome.Saved(2), await plans.HandOverAsync(ReadingFirm.Technician, day, "RYA", "PUM", null, 1));
        Assert.Equal(["YAF-1 PUM", "NUR-1 PUM"], await HandedAsync(ReadingFirm.Technician));
        Assert.Empty(await HandedAsync(OtherTechnician));
        Assert.IsType<SaveOutcome.NotAllowed>(await plans.TakeBackAsync(OtherTechnician, day, 2));
        Assert.IsType<SaveOutcome.ChangedMeanwhile>(await plans.TakeBackAsync(ReadingFirm.Technician, day, 1));

        Assert.Equal(new SaveOutcome.Saved(3), await plans.TakeBackAsync(ReadingFirm.Technician, day, 2));
        Assert.Equal(["YAF-1", "NUR-1"], (await plans.DaysAsync(ReadingFirm.Technician, day, day))[day].Plan.Of("RYA").Select(stop => stop.Site));
        Assert.Empty(await HandedAsync(ReadingFirm.Technician));

        // A visit of somebody else at the site, and one of the colleague on another day, are none of the colleague's of this day.
        await plans.HandOverAsync(ReadingFirm.Technician, day, "RYA", "PUM", null, 3);
        var noon = day.ToDateTime(new TimeOnly(12, 0), DateTimeKind.Utc);
        await firm.AddVisitAsync(nurle, ReadingFirm.VisitOf("NUR-1", noon.AddDays(-1), 1350, technician: "PUM"));
        await firm.AddVisitAsync(nurle, ReadingFirm.VisitOf("NUR-1", noon.AddHours(-3), 1350, technician: "RYA"));
        Assert.Equal(new SaveOutcome.Saved(5), await plans.TakeBackAsync(ReadingFirm.Technician, day, 4));
        await plans.HandOverAsync(ReadingFirm.Technician, day, "RYA", "PUM", null, 5);
        await firm.AddVisitAsync(nurle, ReadingFirm.VisitOf("NUR-1", noon, 1350, technician: "PUM"));

        var refused = Assert.IsType<SaveOutcome.Invalid>(await plans.TakeBackAsync(ReadingFirm.Technician, day, 6));
        Assert.StartsWith("PUM has begun the visit at NUR-1", Assert.Single(refused.Issues).Message, StringComparison.Ordinal);
        Assert.Equal(2, (await plans.DaysAsync(ReadingFirm.Technician, day, day))[day].Plan.Of("PUM").Count);
    }

    [Fact]
    public async Task TakeBack_ColleagueWritesADraft_IsRefused()
    {
        await using var firm = await FirmAsync("YAF-1");
        var (day, plans) = (Today(firm), Plans(firm));
        await plans.AssignAsync(ReadingFirm.Supervisor, day, "YAF-1", "RYA", 0);
        await plans.HandOverAsync(ReadingFirm.Technician, day, "RYA", "PUM", null, 1);
        await firm.Store.WriteAsync(ReadingFirm.Supervisor, async db =>
        {
            var user = new LogBookUser { UserName = "p.umber", Email = "p.umber@quernwath.example", PersonCode = "PUM" };
            db.Users.Add(user);
            await db.SaveChangesAsync();
            var site = await db.Sites.SingleAsync();
            db.Drafts.Add(new DraftRow { CustomerId = site.CustomerId, SiteId = site.Id, UserId = user.Id, VisitId = Guid.CreateVersion7(), Document = "{}", UpdatedAt = firm.Clock.GetUtcNow().UtcDateTime });
        });

        Assert.IsType<SaveOutcome.Invalid>(await plans.TakeBackAsync(ReadingFirm.Technician, day, 2));
    }

    // A supervisor's word is not taken back by the technician.
    [Fact]
    public async Task TakeBack_DayThatASupervisorHandedOver_IsNotAllowed()
    {
        await using var firm = await FirmAsync("YAF-1");
        var (day, plans) = (Today(firm), Plans(firm));
        await plans.AssignAsync(ReadingFirm.Supervisor, day, "YAF-1", "RYA", 0);
        await plans.HandOverAsync(ReadingFirm.Supervisor, day, "RYA", "PUM", null, 1);

        Assert.IsType<SaveOutcome.NotAllowed>(await plans.TakeBackAsync(ReadingFirm.Technician, day, 2));
        Assert.Empty((await Query(firm).OfAsync(ReadingFirm.Technician, day, 1))!.Days[0].HandedAway);
    }

    [Fact]
    public async Task Move_TechnicianOwnStops_IsTheOrderOfTheRound()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1", "GRO-1");
        var (day, version) = (Today(firm), 0);
        foreach (var site in new[] { "YAF-1", "NUR-1" })
        {
            version = Assert.IsType<SaveOutcome.Saved>(await Plans(firm).AssignAsync(ReadingFirm.Supervisor, day, site, "RYA", version)).Version;
        }

        await Plans(firm).MoveAsync(ReadingFirm.Technician, day, "NUR-1", -1, version);

        var round = (await new TodaysRoundQuery(firm.Store, SitesOf(firm), firm.Clock).OfAsync(ReadingFirm.Technician))!;
        Assert.Equal([("NUR-1", "RYA"), ("YAF-1", "RYA"), ("GRO-1", null)], round.Stops.Select(stop => (stop.Site.Code, stop.PlannedFor)));
    }

    [Fact]
    public async Task Round_SiteOfAnotherPlannedForMe_IsOnMyRoundAndMarkedOnTheirs()
    {
        await using var firm = await FirmAsync("YAF-1");
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), "YAF-1", "PUM", 0);
        var rounds = new TodaysRoundQuery(firm.Store, SitesOf(firm), firm.Clock);

        Assert.Equal([("YAF-1", "PUM")], (await rounds.OfAsync(OtherTechnician))!.Stops.Select(stop => (stop.Site.Code, stop.PlannedFor)));
        Assert.Equal([("YAF-1", "PUM")], (await rounds.OfAsync(ReadingFirm.Technician))!.Stops.Select(stop => (stop.Site.Code, stop.PlannedFor)));
    }

    [Fact]
    public async Task Plan_VisitMade_CarriesItsStateAndTheRestIsOpen()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1");
        var day = Today(firm);
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, day, "YAF-1", "RYA", 0);
        var site = await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.Sites.SingleAsync(row => row.Code == "YAF-1"));
        await firm.AddVisitAsync((site.CustomerId, site.Id, 0), ReadingFirm.VisitOf("YAF-1", firm.Clock.GetUtcNow().UtcDateTime.AddHours(-1), 1350));

        var plan = (await Query(firm).OfAsync(ReadingFirm.Supervisor, null, 1))!;

        var person = Assert.Single(Assert.Single(plan.Days).People);
        var stop = Assert.Single(person.Stops);
        Assert.Equal(("R. Yaffle", VisitState.Closed), (person.Name, stop.Visit!.Value));

        // One system, one range: 15 + 15 + 3 minutes.
        Assert.Equal((33.0, true), (stop.Minutes, stop.Site!.Need!.IsRuleOfThumb));
        Assert.Equal(["NUR-1"], plan.Open.Select(open => open.Code));
        Assert.Equal(["PUM", "RYA", "IWE"], plan.People.Select(one => one.Code));
    }

    [Fact]
    public async Task Pack_PlannedStops_AreInOrderWithTheirDrums()
    {
        await using var firm = await FirmAsync("YAF-1", "NUR-1");
        var day = Today(firm);
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, day, "NUR-1", "RYA", 0);
        var systems = await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.Systems.ToListAsync());
        foreach (var system in systems)
        {
            await firm.SetAheadAsync((system.CustomerId, system.SiteId, system.Id), new SystemAhead { Drums = [new DrumAhead("D-INH", "P-40", day.AddDays(-1), 5, 0.5) { UsePerDayL = 1, UsePerDayUncertaintyL = 0.1 }] });
        }

        var pack = (await Packs(firm).OfAsync(ReadingFirm.Technician, day, "RYA"))!;

        Assert.Equal(["NUR-1"], pack.Stops.Select(stop => stop.Code));
        Assert.Equal(("NUR-1", day.AddDays(14)), (Assert.Single(pack.List.Products).Site, pack.List.Products[0].LastsUntil));
    }

    [Fact]
    public async Task Today_SitesInSeveralZones_IsTheDayAtTheOwnSites()
    {
        // 13:00 UTC is 01:00 of the next day in Auckland. RYA has two sites there, PUM three where it is still the day before.
        await using var firm = await FirmAsync();
        foreach (var (site, person, zone) in new[] { ("AAA-1", "RYA", "Pacific/Auckland"), ("AAA-2", "RYA", "Pacific/Auckland"), ("BBB-1", "PUM", "Europe/London"), ("BBB-2", "PUM", "Europe/London"), ("BBB-3", "PUM", "Europe/London") })
        {
            await firm.AddSiteAsync(site, assignedTo: person, timeZone: zone);
        }

        firm.Clock.SetUtcNow(new DateTimeOffset(2026, 4, 20, 13, 0, 0, TimeSpan.Zero));
        var (here, there) = (new DateOnly(2026, 4, 20), new DateOnly(2026, 4, 21));

        Assert.Equal(there, (await Query(firm).OfAsync(ReadingFirm.Technician, null, 7))!.Today);
        Assert.Equal(here, (await Query(firm).OfAsync(OtherTechnician, null, 7))!.Today);
        Assert.Equal(there, (await Packs(firm).OfAsync(ReadingFirm.Technician, null, "RYA"))!.Day);
        Assert.Equal(here, (await Packs(firm).OfAsync(OtherTechnician, null, "PUM"))!.Day);

        // Who plans for all, and whoever has no site, sees the day at most of them.
        Assert.Equal(here, (await Query(firm).OfAsync(ReadingFirm.Supervisor, null, 7))!.Days[0].Day);
        Assert.Equal(here, (await Packs(firm).OfAsync(ReadingFirm.Supervisor, null, "IWE"))!.Day);
        Assert.Equal(new DateOnly(2026, 5, 1), (await Packs(firm).OfAsync(ReadingFirm.Technician, new DateOnly(2026, 5, 1), "RYA"))!.Day);
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task Plan_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await FirmAsync("AAA-0");
        await Plans(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), "AAA-0", "RYA", 0);
        var (query, packs) = (Query(firm), Packs(firm));
        Task<int> PageAsync() => firm.CountAsync(() => query.OfAsync(ReadingFirm.Supervisor, null, 7));
        Task<int> PackAsync() => firm.CountAsync(() => packs.OfAsync(ReadingFirm.Supervisor, Today(firm), "RYA"));
        await PageAsync();
        await PackAsync();
        var few = (await PageAsync(), await PackAsync());
        for (var i = 1; i < 10; i++)
        {
            await firm.AddVisitAsync(await firm.AddSiteAsync($"AAA-{i}"), ReadingFirm.VisitOf($"AAA-{i}", ReadingFirm.Start, 1350));
        }

        await StampAsync(firm);
        await PageAsync();
        await PackAsync();
        for (var i = 1; i < 10; i++)
        {
            Assert.IsType<SaveOutcome.Saved>(await Plans(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), $"AAA-{i}", "RYA", i));
        }

        var many = (await PageAsync(), await PackAsync());

        Assert.Equal(few, many);
        Assert.InRange(many.Item1, 1, 8);
        Assert.InRange(many.Item2, 1, 4);
    }

    private static Task StampAsync(ReadingFirm firm) =>
        firm.Store.WriteAsync(Viewer.System("test"), db => db.Firm.ExecuteUpdateAsync(set => set.SetProperty(row => row.SetUpStamp, row => row.SetUpStamp + 1)));
}
