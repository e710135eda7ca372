using Bunit;
using LogBook.Application.Planning;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Round;
using LogBook.Web.Features.Round.Leave;
using LogBook.Web.Features.Round.Plan;

namespace LogBook.Web.Tests.Readers;

public sealed class LeavePagesTests
{
    [Fact]
    public async Task Leave_Entered_MarksThePlanAndIsTakenBackAndPutBack()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);
        var today = Today(pages.Firm);
        await Plans(pages.Firm).AssignAsync(ReadingFirm.Supervisor, today, "YAF-1", "RYA", 0);
        var page = pages.Render<LeavePage>(LeaveLinks.Leave);
        Assert.Equal("Nobody is away and nothing is closed", page.Find(".empty-title").TextContent);

        page.Find("#leave-who").Change("RYA");
        page.Find("#leave-from").Change(today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        page.Find("#leave-to").Change(today.AddDays(2).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        page.Find("#leave-stand-in").Change("PUM");
        page.Find("#leave-reason").Change("Course");
        await page.Find("form.confirm").SubmitAsync();

        page.WaitForAssertion(() => Assert.StartsWith("Kept: R. Yaffle", page.Find("#leave-said").TextContent, StringComparison.Ordinal));
        Assert.Contains("P. Umber stands in", page.Find(".plan-open li").TextContent, StringComparison.Ordinal);
        Assert.Contains("course", page.Find(".plan-open li").TextContent, StringComparison.Ordinal);
        Assert.Equal("", page.Find("#leave-from").GetAttribute("value") ?? "");

        // The visit that was planned before needs somebody; the other site's is planned for who stands in.
        var plan = pages.Render<PlanPage>(PlanLinks.Plan);
        Assert.Contains("needs somebody", plan.Find(".plan-person").TextContent, StringComparison.Ordinal);
        Assert.Contains("P. Umber goes instead of R. Yaffle", plan.Find(".plan-open").TextContent, StringComparison.Ordinal);
        await plan.Find(".plan-open .button").ClickAsync(new());
        plan.WaitForAssertion(() => Assert.StartsWith("NUR-1 is planned for P. Umber", plan.Find(".plan-said").TextContent, StringComparison.Ordinal));

        // One tap hands what needs somebody to who stands in.
        var hand = plan.Find(".plan-person .button.main");
        Assert.StartsWith("Hand this day to P. Umber", hand.TextContent, StringComparison.Ordinal);
        await hand.ClickAsync(new());
        plan.WaitForAssertion(() => Assert.Single(plan.FindAll(".plan-person")));
        Assert.DoesNotContain("needs somebody", plan.Find(".plan-person").TextContent, StringComparison.Ordinal);
        Assert.Empty(plan.FindAll(".plan-person .button.main"));

        await page.FindAll(".plan-acts .button")[1].ClickAsync(new());
        page.WaitForAssertion(() => Assert.StartsWith("Taken back: R. Yaffle", page.Find("#leave-said").TextContent, StringComparison.Ordinal));
        await page.Find("#leave-undo").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Single(page.FindAll(".plan-open li")));
    }

    [Fact]
    public async Task Leave_WeekdaysOfAFirm_AreKeptForYearsAndSaidInWords()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, Language.Spanish, fill: FillAsync);
        var today = Today(pages.Firm);
        var page = pages.Render<LeavePage>(LeaveLinks.Leave);

        page.Find("#leave-kind").Change("Firm");
        page.Find("#leave-from").Change(today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        page.Find("#leave-to").Change(today.AddYears(5).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        page.Find("#leave-sunday").Change(true);
        page.Find("#leave-saturday").Change(true);
        await page.Find("form.confirm").SubmitAsync();

        page.WaitForAssertion(() => Assert.Contains("cada sáb, dom,", page.Find(".plan-open li").TextContent, StringComparison.Ordinal));
        var kept = await new DaysOffStore(pages.Firm.Store, new(pages.Firm.Store, pages.Firm.Clock), pages.Firm.Clock).ListAsync(ReadingFirm.Supervisor, today);
        var calendar = new RoundCalendar(kept.Select(days => days.Off));
        var fortnight = Enumerable.Range(0, 14).Select(today.AddDays).ToList();
        Assert.Equal(fortnight.Where(day => day.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday), fortnight.Where(day => calendar.FirmClosed(day) is not null));
    }

    [Fact]
    public async Task Leave_NotWhole_KeepsWhatWasTyped()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);
        var page = pages.Render<LeavePage>(LeaveLinks.Leave);
        Assert.Empty(page.FindAll("#leave-kind, #leave-who"));

        page.Find("#leave-from").Change("2026-12-24");
        await page.Find("form.confirm").SubmitAsync();
        Assert.Equal("First and last day are needed.", page.Find("#leave-said").TextContent);
        page.Find("#leave-to").Change("2026-12-21");
        await page.Find("form.confirm").SubmitAsync();

        page.WaitForAssertion(() => Assert.Equal("The last day lies before the first.", page.Find("#leave-said").TextContent));
        Assert.Equal("2026-12-24", page.Find("#leave-from").GetAttribute("value"));
        page.Find("#leave-to").Change("2026-12-28");
        await page.Find("form.confirm").SubmitAsync();
        page.WaitForAssertion(() => Assert.Contains("nobody stands in", page.Find(".plan-open li").TextContent, StringComparison.Ordinal));
    }

    [Fact]
    public async Task Leave_OfSomebodyElse_IsSeenAndNotChangedByATechnician()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, Language.Spanish, FillAsync);
        var today = Today(pages.Firm);
        await Days(pages.Firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Person, "PUM", today, today.AddDays(1)) { StandIn = "RYA" }, 0);

        var page = pages.Render<LeavePage>(LeaveLinks.Leave);

        Assert.Contains("sustituye R. Yaffle", page.Find(".plan-open li").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".plan-open .button"));
    }

    [Fact]
    public async Task Round_StandsIn_SaysInWhosePlace()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: async firm =>
        {
            await FillAsync(firm);
            await firm.AddVisitAsync(await firm.AddSiteAsync("GRO-1", assignedTo: "PUM"), ReadingFirm.VisitOf("GRO-1", firm.Clock.GetUtcNow().UtcDateTime.AddDays(-9), 1350));
            var today = Today(firm);
            await Days(firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Person, "PUM", today, today) { StandIn = "RYA" }, 0);
            return null;
        });

        var stop = pages.Render<RoundPage>("/").FindAll(".stop").Single(one => one.TextContent.Contains("GRO-1", StringComparison.Ordinal));

        Assert.Contains("in place of PUM", stop.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Patch_ChosenSites_GoToTheColleagueAndBack()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);
        var page = pages.Render<PatchPage>(LeaveLinks.PatchOf("RYA"));
        Assert.StartsWith("Chosen: 2 of 2, 66 min", page.Find(".list-count").TextContent, StringComparison.Ordinal);

        page.FindAll("input[type=checkbox]")[0].Change(false);
        Assert.StartsWith("Chosen: 1 of 2, 33 min", page.Find(".list-count").TextContent, StringComparison.Ordinal);
        Assert.StartsWith("Hand over to P. Umber", page.Find("#patch-go").TextContent, StringComparison.Ordinal);
        page.Find("#patch-to").Change("");
        await page.Find("#patch-go").ClickAsync(new());
        Assert.Equal("Choose who takes them over.", page.Find("#patch-said").TextContent);
        page.Find("#patch-to").Change("PUM");
        await page.Find("#patch-go").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal("Now on the round of P. Umber: NUR-1.", page.Find("#patch-said").TextContent));
        Assert.Single(page.FindAll("input[type=checkbox]"));
        await page.Find("#patch-back").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll("input[type=checkbox]").Count));
        Assert.Empty(page.FindAll("#patch-back"));
    }

    [Fact]
    public async Task Patch_ForSomeDays_IsLentAndTakenBack()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);
        var today = Today(pages.Firm);
        var page = pages.Render<PatchPage>(LeaveLinks.PatchOf("RYA"));
        page.Find("#patch-to").Change("PUM");
        page.Find("#patch-span").Change("days");
        await page.Find("#patch-go").ClickAsync(new());
        Assert.Equal("First and last day are needed.", page.Find("#patch-said").TextContent);

        page.Find("#patch-first").Change(today.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        page.Find("#patch-last").Change(today.AddDays(4).ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture));
        page.FindAll("input[type=checkbox]")[0].Change(false);
        await page.Find("#patch-go").ClickAsync(new());

        page.WaitForAssertion(() => Assert.EndsWith("then back by itself: NUR-1.", page.Find("#patch-said").TextContent, StringComparison.Ordinal));
        Assert.Equal(2, page.FindAll("input[type=checkbox]").Count);
        var kept = Assert.Single(await Days(pages.Firm).ListAsync(ReadingFirm.Supervisor, today));
        Assert.Equal((DaysOffKind.Lent, "RYA", "PUM", 1), (kept.Off.Kind, kept.Off.Of, kept.Off.StandIn, kept.Off.Sites.Count));
        Assert.Contains("go to P. Umber", pages.Render<LeavePage>(LeaveLinks.Leave).Find(".plan-open li").TextContent, StringComparison.Ordinal);

        await page.Find("#patch-not-lent").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal("They stay with R. Yaffle.", page.Find("#patch-said").TextContent));
        Assert.Empty(await Days(pages.Firm).ListAsync(ReadingFirm.Supervisor, today));
    }

    [Fact]
    public async Task Plan_ClosedSite_IsMarkedWithItsReason_AndNotPlannedWithTheOthers()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: firm => FillAsync(firm, 40, 50));
        var today = Today(pages.Firm);
        await Days(pages.Firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Site, "YAF-1", today, today) { Reason = OffReason.NoAccess }, 0);
        var page = pages.Render<PlanPage>(PlanLinks.Plan);
        var closed = page.FindAll(".plan-open > li").Single(one => one.TextContent.Contains("YAF-1", StringComparison.Ordinal));
        Assert.Contains($"closed {Shown.Day(today, Language.English)}: no access", closed.TextContent, StringComparison.Ordinal);

        // Of two that are due one is left: too few for planning all at once.
        Assert.Empty(page.FindAll("#plan-all"));
        var kept = Assert.Single(await Days(pages.Firm).ListAsync(ReadingFirm.Supervisor, today));
        await Days(pages.Firm).TakeBackAsync(ReadingFirm.Supervisor, kept.Off, kept.Version);
        Assert.Single(pages.Render<PlanPage>(PlanLinks.Plan).FindAll("#plan-all"));
    }

    [Fact]
    public async Task Round_ClosedToday_SaysWhyAndWhenItOpens()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: async firm =>
        {
            await FillAsync(firm);
            var today = Today(firm);
            await Days(firm).SaveAsync(ReadingFirm.Supervisor, new DaysOff(DaysOffKind.Site, "YAF-1", today, today.AddDays(1)) { Reason = OffReason.PlantShut }, 0);
            return null;
        });

        var stops = pages.Render<RoundPage>("/").FindAll(".stop");

        Assert.Contains("closed today: plant shut", stops.Single(one => one.TextContent.Contains("YAF-1", StringComparison.Ordinal)).TextContent, StringComparison.Ordinal);
        Assert.DoesNotContain("closed today", stops.Single(one => one.TextContent.Contains("NUR-1", StringComparison.Ordinal)).TextContent, StringComparison.Ordinal);
    }

    private static Task<int?> FillAsync(ReadingFirm firm) => FillAsync(firm, 9, 12);

    private static async Task<int?> FillAsync(ReadingFirm firm, int nurDays, int yafDays)
    {
        await firm.AddPeopleAsync(
            new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician },
            new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician },
            new Person { Code = "IWE", Name = "I. Wendle", Role = PersonRole.Supervisor });
        foreach (var (code, days) in new[] { ("NUR-1", nurDays), ("YAF-1", yafDays) })
        {
            await firm.AddVisitAsync(await firm.AddSiteAsync(code), ReadingFirm.VisitOf(code, firm.Clock.GetUtcNow().UtcDateTime.AddDays(-days), 1350));
        }

        return null;
    }

    private static DateOnly Today(ReadingFirm firm) => DateOnly.FromDateTime(firm.Clock.GetUtcNow().UtcDateTime);

    private static DaysOffStore Days(ReadingFirm firm) => new(firm.Store, new(firm.Store, firm.Clock), firm.Clock);

    private static PlanStore Plans(ReadingFirm firm) => new(firm.Store, new(firm.Store, firm.Clock), firm.Clock);
}
