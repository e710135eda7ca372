using Bunit;
using LogBook.Application.Planning;
using LogBook.Domain.Languages;
using LogBook.Domain.Rounds.Planning;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Round;
using LogBook.Web.Features.Round.Plan;

namespace LogBook.Web.Tests.Readers;

public sealed class PlanPageTests
{
    [Fact]
    public async Task Plan_Supervisor_PlansASiteForItsOwnTechnician()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);
        var page = pages.Render<PlanPage>(PlanLinks.Plan);
        Assert.Equal(7, page.FindAll(".plan-day").Count);
        Assert.Equal(2, page.FindAll(".plan-open > li").Count);

        await page.Find(".plan-open > li .button").ClickAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("YAF-1 is planned for R. Yaffle", page.Find(".plan-said").TextContent, StringComparison.Ordinal));
        Assert.Contains("1 stop", page.Find(".plan-person h3").TextContent, StringComparison.Ordinal);
        Assert.Contains("Planned", page.Find(".plan-stop").TextContent, StringComparison.Ordinal);
        Assert.Single(page.FindAll(".plan-open > li"));
    }

    [Fact]
    public async Task Plan_AllDue_ArePlannedAtOnceWithTheirMinutes()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);
        var page = pages.Render<PlanPage>(PlanLinks.Plan);

        await page.Find("#plan-all").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal(["YAF-1", "NUR-1"], page.FindAll(".plan-stop .stop-name b").Select(code => code.TextContent)));
        Assert.Contains("66 min on site of 480 min a day", page.Find(".plan-person").TextContent, StringComparison.Ordinal);
        Assert.Equal("All sites with a clock stand in the plan.", page.Find("#open-sites ~ .fine-print").TextContent);
    }

    [Fact]
    public async Task Plan_Technician_ReordersOwnStopsByButtonsAlone()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: PlannedAsync);
        var page = pages.Render<PlanPage>(PlanLinks.Plan);
        Assert.Empty(page.FindAll("#plan-person, .plan-open .button"));
        Assert.DoesNotContain("Take off", page.Markup, StringComparison.Ordinal);

        await page.Find("[aria-label='Make NUR-1 earlier']").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal(["NUR-1", "YAF-1"], page.FindAll(".plan-stop .stop-name b").Select(code => code.TextContent)));
        Assert.Equal("NUR-1 is now stop 1 of 2.", page.Find(".plan-said").TextContent);
        Assert.True(page.Find("[aria-label='Make NUR-1 earlier']").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Round_Technician_OrdersUnplannedStopsByButtonsAlone()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);
        var page = pages.Render<RoundPage>("/");
        Assert.Equal(["YAF-1", "NUR-1"], page.FindAll(".stop .stop-name b").Select(code => code.TextContent));

        await page.Find("[aria-label='Make NUR-1 earlier']").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal(["NUR-1", "YAF-1"], page.FindAll(".stop .stop-name b").Select(code => code.TextContent)));
        Assert.Equal("NUR-1 is now stop 1 of 2.", page.Find(".plan-said").TextContent);
        Assert.True(page.Find("[aria-label='Make NUR-1 earlier']").HasAttribute("disabled"));
    }

    [Fact]
    public async Task Plan_DayHandedOver_GoesToTheColleagueAndComesBack()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: PlannedAsync);
        var page = pages.Render<PlanPage>(PlanLinks.Plan);
        Assert.DoesNotContain(page.FindAll(".hand-over .button"), button => button.TextContent == "R. Yaffle");
        var colleague = page.FindAll(".hand-over .button")[0].TextContent;

        await page.FindAll(".hand-over .button")[0].ClickAsync(new());

        page.WaitForAssertion(() => Assert.Contains(colleague, page.Find(".plan-said").TextContent, StringComparison.Ordinal));
        Assert.StartsWith(colleague, page.Find(".plan-person h3").TextContent, StringComparison.Ordinal);
        Assert.Equal(["YAF-1", "NUR-1"], page.FindAll(".plan-stop .stop-name b").Select(code => code.TextContent));

        await page.Find("#hand-back").ClickAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("R. Yaffle", page.Find(".plan-person h3").TextContent, StringComparison.Ordinal));
        Assert.Equal(["YAF-1", "NUR-1"], page.FindAll(".plan-stop .stop-name b").Select(code => code.TextContent));
        Assert.Empty(page.FindAll("#hand-back"));
    }

    [Fact]
    public async Task Plan_OnePress_HandsTheDayToTheTechnicianWithTheFewestMinutesAndBack()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            await FillAsync(firm, new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician }, new Person { Code = "TNU", Name = "T. Nurle", Role = PersonRole.Technician });
            await firm.AddSiteAsync("GRO-1", assignedTo: "PUM");
            await Store(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), [new("YAF-1", "RYA"), new("NUR-1", "RYA"), new("GRO-1", "PUM")], 0);
            return null;
        });
        var page = pages.Render<PlanPage>(PlanLinks.Plan);
        string[] Hands() => [.. page.FindAll(".plan-person .hand-to").Select(button => button.FirstChild!.TextContent)];
        Assert.Equal(["Hand this day to T. Nurle", "Hand this day to T. Nurle"], Hands());

        await page.FindAll(".plan-person .hand-to")[1].ClickAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("2 stops of", page.Find(".plan-said").TextContent, StringComparison.Ordinal));
        Assert.Equal(["P. Umber", "T. Nurle"], page.FindAll(".plan-person h3").Select(name => name.FirstChild!.TextContent.Trim()));
        Assert.Equal(["Hand this day to R. Yaffle", "Hand this day to R. Yaffle"], Hands());
        await page.Find("#hand-back").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal(["P. Umber", "R. Yaffle"], page.FindAll(".plan-person h3").Select(name => name.FirstChild!.TextContent.Trim())));
    }

    [Fact]
    public async Task Plan_TechniciansOwnDay_IsNotOfferedInOnePressThatCouldNotBeTakenBack()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: async firm =>
        {
            await FillAsync(firm, new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician });
            await Store(firm).AssignAsync(ReadingFirm.Supervisor, Today(firm), "YAF-1", "RYA", 0);
            return null;
        });
        var page = pages.Render<PlanPage>(PlanLinks.Plan);

        Assert.NotEmpty(page.FindAll(".hand-over .button"));
        Assert.Empty(page.FindAll(".hand-to"));
    }

    [Fact]
    public async Task Plan_Technician_HandsOverTheOwnDayAndTakesItBackLater()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: PlannedAsync);
        var page = pages.Render<PlanPage>(PlanLinks.Plan);

        await page.FindAll(".hand-over .button")[0].ClickAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("2 stops of", page.Find(".plan-said").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll(".plan-stop, #hand-back"));

        // Not only at once: on the page opened anew it is still offered.
        page = pages.Render<PlanPage>(PlanLinks.Plan);
        Assert.Contains("YAF-1, NUR-1", page.Find(".handed-away").TextContent, StringComparison.Ordinal);
        await page.Find(".take-back").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal(["YAF-1", "NUR-1"], page.FindAll(".plan-stop .stop-name b").Select(code => code.TextContent)));
        Assert.Contains("R. Yaffle", page.Find(".plan-said").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll(".handed-away"));
    }

    [Fact]
    public async Task Plan_ChangedMeanwhile_SaysSoAndShowsWhatStands()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: PlannedAsync);
        var page = pages.Render<PlanPage>(PlanLinks.Plan);
        await Store(pages.Firm).TakeOffAsync(ReadingFirm.Supervisor, Today(pages.Firm), "YAF-1", 2);

        await page.Find("[aria-label='Make NUR-1 earlier']").ClickAsync(new());

        page.WaitForAssertion(() => Assert.StartsWith("The plan of this day was changed meanwhile", page.Find(".problems").TextContent, StringComparison.Ordinal));
        Assert.Equal(["NUR-1"], page.FindAll(".plan-stop .stop-name b").Select(code => code.TextContent));
    }

    [Fact]
    public async Task Round_PlannedStops_StandFirstInTheirOrder()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: PlannedAsync);

        var page = pages.Render<RoundPage>("/");

        Assert.StartsWith("Planned for you today", page.Find(".round-group h2").TextContent, StringComparison.Ordinal);
        Assert.Equal(["YAF-1", "NUR-1"], page.FindAll(".round-group:first-of-type .stop-name b").Select(code => code.TextContent));
        Assert.Contains("every 7 days, last visit", page.Find(".stop-reasons").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Language.English, "30\u00a0L", "must never meet")]
    [InlineData(Language.Spanish, "30\u00a0L", "nunca deben juntarse")]
    public async Task Pack_Day_SaysLitresAndWhatMustNotMeet(Language language, string litres, string caution)
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, language, PlannedAsync);

        var page = pages.Render<PackPage>(PlanLinks.PackOf(Today(pages.Firm), "RYA"));

        Assert.Contains(litres, page.Find("table").TextContent, StringComparison.Ordinal);
        Assert.Contains(caution, page.Find(".caution").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pack_OfSomebodyElse_IsNotThereForATechnician()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: PlannedAsync);

        Assert.Empty(pages.Render<PackPage>(PlanLinks.PackOf(Today(pages.Firm), "PUM")).FindAll("table"));
    }

    // Both overdue, the college longer.
    private static Task<int?> FillAsync(ReadingFirm firm) => FillAsync(firm, []);

    private static async Task<int?> FillAsync(ReadingFirm firm, params Person[] colleagues)
    {
        await firm.AddPeopleAsync(
        [
            new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician },
            new Person { Code = "IWE", Name = "I. Wendle", Role = PersonRole.Supervisor },
            .. colleagues,
        ]);
        var today = firm.Clock.GetUtcNow().UtcDateTime;
        foreach (var (code, days) in new[] { ("NUR-1", 9), ("YAF-1", 12) })
        {
            await firm.AddVisitAsync(await firm.AddSiteAsync(code), ReadingFirm.VisitOf(code, today.AddDays(-days), 1350));
        }

        return null;
    }

    private static async Task<int?> PlannedAsync(ReadingFirm firm)
    {
        await FillAsync(firm);
        await firm.AddProductsAsync(
            new Domain.Programmes.Product { Code = "A-38", Name = "Acid A-38", Kind = Domain.Programmes.ProductKind.Acid },
            new Domain.Programmes.Product { Code = "H-12", Name = "Biocide H-12", Kind = Domain.Programmes.ProductKind.Biocide, Oxidising = true });
        var day = Today(firm);

        // Acid: 34 L used in the two weeks up to the visit after the next one, 4 L there: 30 L.
        DrumAhead Drum(string code, string product, double use) => new(code, product, day, 4, 0) { UsePerDayL = use, UsePerDayUncertaintyL = 0 };
        await firm.SetAheadAsync(await firm.SystemAsync("YAF-1"), new SystemAhead { Drums = [Drum("D-A", "A-38", 34.0 / 14), Drum("D-H", "H-12", 1)] });
        foreach (var (site, version) in new[] { ("YAF-1", 0), ("NUR-1", 1) })
        {
            await Store(firm).AssignAsync(ReadingFirm.Supervisor, day, site, "RYA", version);
        }

        return null;
    }

    private static DateOnly Today(ReadingFirm firm) => DateOnly.FromDateTime(firm.Clock.GetUtcNow().UtcDateTime);

    private static PlanStore Store(ReadingFirm firm) => new(firm.Store, new(firm.Store, firm.Clock), firm.Clock);
}
