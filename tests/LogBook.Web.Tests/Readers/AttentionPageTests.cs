using Bunit;
using LogBook.Application.Data;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Attention;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Tests.Readers;

public sealed class AttentionPageTests
{
    private static readonly DateOnly Day = new(2026, 4, 1);

    [Fact]
    public async Task List_OneFinding_ShowsEvidenceAtAGlance()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention");

        Assert.Equal("Probe reads off", page.Find(".finding-title a").TextContent);
        Assert.Equal("as found against reference: -7.4\u00a0% (-11.5 to -3.3\u00a0%); limit -5 to 5\u00a0%", page.Find(".finding-evidence").TextContent);
        Assert.Contains("Plan", page.Find(".finding-mark").TextContent, StringComparison.Ordinal);
        Assert.NotNull(page.Find(".finding-mark svg"));
    }

    [Fact]
    public async Task List_FindingWithAClock_SaysWhenItEndsAndWhoIsOfferedAsOwner()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var site = await firm.AddSiteAsync("YAF-1");
            await firm.AddFindingAsync(site, FindingKinds.RunsOut, Severity.Plan, Day, about: new About { Drum = "D-INH" }, state: FindingState.Acknowledged);
            await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, Day);
            await firm.SetAheadAsync(site, new Domain.Rounds.Planning.SystemAhead { Drums = [new("D-INH", "P-40", Day, 4, 0.2) { From = Day.AddDays(9) }] });
            await firm.AddAsync(new FindingMarkRow
            {
                CustomerId = site.Customer, SiteId = site.Site, SystemId = site.System, Kind = FindingKinds.RunsOut, AboutKey = About.Key(new About { Drum = "D-INH" }), FirstSeen = Day, State = FindingState.Acknowledged, Owner = "RYA",
                Who = "I. Wendle", At = ReadingFirm.Start,
            });
            return null;
        });

        var page = pages.Render<AttentionPage>("/attention");

        Assert.Equal("own clock: by 10 Apr 2026", Assert.Single(page.FindAll(".finding-deadline")).TextContent.Trim(' ', '·', '\n', '\r'));
        Assert.Equal(["All", "nobody yet", "RYA"], page.FindAll("#attention-owner option").Select(option => option.TextContent));
        Assert.Equal("Runs out before the next visit", Assert.Single(pages.Render<AttentionPage>("/attention?owner=RYA").FindAll(".finding-title a")).TextContent);
        Assert.Equal("Water loss", Assert.Single(pages.Render<AttentionPage>("/attention?owner=-").FindAll(".finding-title a")).TextContent);
    }

    [Fact]
    public async Task List_InSpanish_SpeaksSpanish()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, Language.Spanish, OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention");

        Assert.Equal("dicho en español", page.Find(".finding-text").TextContent);
        Assert.Contains("-7,4\u00a0%", page.Find(".finding-evidence").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task List_FilterInTheAddress_IsApplied()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention?severity=act");

        Assert.Equal("Nothing matches these filters", page.Find(".empty-title").TextContent);
    }

    [Fact]
    public async Task List_Nothing_SaysHowFindingsComeToBe()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor);

        Assert.Equal("Nothing needs attention", pages.Render<AttentionPage>("/attention").Find(".empty-title").TextContent);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task List_Customer_SeesNothingHere()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: OneFindingAsync);

        var page = pages.Render<AttentionPage>("/attention");

        Assert.Equal("Nothing here", page.Find("h1").TextContent);
        Assert.Empty(page.FindAll(".finding"));
    }

    [Fact]
    public async Task Finding_Opened_ShowsTableAndLinks()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneFindingAsync);

        var page = pages.Render<FindingPage>("/attention/finding?site=YAF-1&system=CT-1&kind=probe-reads-off&seen=2026-04-01");

        Assert.Equal(["-7.4\u00a0%", "-11.5 to -3.3\u00a0%", "-5 to 5\u00a0%"], page.FindAll("td.figure").Select(cell => cell.TextContent));
        Assert.Contains(page.FindAll(".links a"), link => link.GetAttribute("href") == "/sites/YAF-1/systems/CT-1?from=2026-01-31&to=2026-05-01");
        Assert.Contains("% of the reference", page.Find("details dd").TextContent, StringComparison.Ordinal);
    }

    /// <summary>Under "How" stand the method, every figure with its interval and limit, what the interval means, and the source.</summary>
    [Theory]
    [InlineData(Language.English, "How was this worked out?", "What went in", "limit -5 to 5\u00a0%", "95 % interval")]
    [InlineData(Language.Spanish, "¿Cómo se calculó?", "Datos de entrada", "límite -5 a 5\u00a0%", "intervalo del 95 %")]
    [InlineData(Language.Portuguese, "Como isto foi calculado?", "O que entrou", "limite -5 a 5\u00a0%", "intervalo de 95 %")]
    public async Task Finding_How_TellsMethodInputsUncertaintyAndSource(Language language, string how, string inputs, string limit, string interval)
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, language, OneFindingAsync);
        var page = pages.Render<FindingPage>("/attention/finding?site=YAF-1&system=CT-1&kind=probe-reads-off&seen=2026-04-01");

        var answer = page.FindAll("details").Single(details => details.QuerySelector("summary")!.TextContent == how);
        var told = answer.QuerySelectorAll("dt").Zip(answer.QuerySelectorAll("dd"), (term, said) => (Term: term.TextContent, Said: said.TextContent)).ToList();

        Assert.Equal(4, told.Count);
        Assert.Contains(FindingMethods.Of(FindingKinds.ProbeReadsOff).Judged.In(language), told[0].Said, StringComparison.Ordinal);
        Assert.Equal(inputs, told[1].Term);
        Assert.Contains("-7.4", told[1].Said.Replace(',', '.'), StringComparison.Ordinal);
        Assert.Contains(limit, told[1].Said, StringComparison.Ordinal);
        Assert.Contains(interval, told[2].Said, StringComparison.Ordinal);
        Assert.Contains(FindingMethods.Of(FindingKinds.ProbeReadsOff).Source.In(language), told[3].Said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Finding_Unknown_IsAbsent()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneFindingAsync);

        Assert.Equal("Nothing here", pages.Render<FindingPage>("/attention/finding?site=NUR-1&kind=probe-reads-off&seen=2026-04-01").Find("h1").TextContent);
    }

    [Fact]
    public async Task List_Technician_HasNothingToAnswerWith()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: OneFindingAsync);

        Assert.Empty(pages.Render<AttentionPage>("/attention").FindAll(".finding-acts"));
        Assert.Empty(pages.Render<FindingPage>("/attention/finding?site=YAF-1&system=CT-1&kind=probe-reads-off&seen=2026-04-01").FindAll(".finding-acts"));
    }

    [Fact]
    public async Task Answer_Sleep_AsksForDayAndReasonAndIsKept()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: OneFindingAsync);
        var page = pages.Render<AttentionPage>("/attention");

        await page.FindAll(".finding-acts button").Single(button => button.TextContent == "Put to sleep until a day").ClickAsync();
        await page.Find(".finding-acts form").SubmitAsync();
        Assert.Contains("A day after today", page.Find(".finding-acts [role=status]").TextContent, StringComparison.Ordinal);
        await page.Find(".finding-acts input[type=date]").ChangeAsync("2026-05-04");
        await page.Find(".finding-acts form").SubmitAsync();
        Assert.Equal("A reason is needed.", page.Find(".finding-acts [role=status]").TextContent);
        Assert.Empty(await MarksAsync(pages));

        await page.Find(".finding-acts textarea").ChangeAsync("tower off until May");
        await page.Find(".finding-acts form").SubmitAsync();

        var mark = Assert.Single(await MarksAsync(pages));
        Assert.Equal((FindingState.Snoozed, new DateOnly(2026, 5, 4), "tower off until May"), (mark.State, mark.Until!.Value, mark.Because));
    }

    [Fact]
    public async Task Answer_TakeOnInSpanish_IsKeptWithWhoDidIt()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, Language.Spanish, OneFindingAsync);
        var page = pages.Render<FindingPage>("/attention/finding?site=YAF-1&system=CT-1&kind=probe-reads-off&seen=2026-04-01");

        await page.FindAll(".finding-acts button").Single(button => button.TextContent == "Encargarse de esto").ClickAsync();
        await page.Find(".finding-acts form").SubmitAsync();

        var mark = Assert.Single(await MarksAsync(pages));
        Assert.Equal((FindingState.Acknowledged, "r.yaffle@quernwath.example"), (mark.State, mark.Who));
    }

    [Fact]
    public async Task List_DueSoon_IsCountedAndListedWhenAskedFor()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var site = await firm.AddSiteAsync("YAF-1");
            await firm.AddFindingAsync(site, FindingKinds.ClockDue, Severity.Watch, Day);
            await firm.AddFindingAsync(site, FindingKinds.ClockDue, Severity.Act, Day.AddDays(1));
            return site.Customer;
        });

        var page = pages.Render<AttentionPage>("/attention");
        Assert.Contains("Act", Assert.Single(page.FindAll(".finding-mark")).TextContent, StringComparison.Ordinal);
        var link = page.FindAll("a").Single(a => a.TextContent == "Due soon: 1").GetAttribute("href")!;

        Assert.Contains("Watch", Assert.Single(pages.Render<AttentionPage>(link).FindAll(".finding-mark")).TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task List_Asleep_IsLeftOutCountedAndListedWhenAskedFor()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var site = await firm.AddSiteAsync("YAF-1");
            await firm.AddFindingAsync(site, FindingKinds.ProbeReadsOff, Severity.Plan, Day);
            await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Act, Day, state: FindingState.Snoozed);
            return site.Customer;
        });

        var page = pages.Render<AttentionPage>("/attention");
        Assert.Equal("Probe reads off", Assert.Single(page.FindAll(".finding-title a")).TextContent);
        Assert.Equal("Asleep: 1", page.Find("#asleep").TextContent);

        var asleep = pages.Render<AttentionPage>(page.Find("#asleep").GetAttribute("href")!);
        Assert.Equal("Water loss", Assert.Single(asleep.FindAll(".finding-title a")).TextContent);
        Assert.Empty(asleep.FindAll("#asleep"));
    }

    [Fact]
    public async Task List_AsleepAtAnotherSite_IsNotCountedWithTheFilter()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var site = await firm.AddSiteAsync("YAF-1");
            await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Act, Day, state: FindingState.Snoozed);
            await firm.AddSiteAsync("NUR-1");
            return site.Customer;
        });

        Assert.NotEmpty(pages.Render<AttentionPage>("/attention?site=YAF-1").FindAll("#asleep"));
        Assert.Empty(pages.Render<AttentionPage>("/attention?site=NUR-1").FindAll("#asleep"));
    }

    [Fact]
    public async Task SecondLook_Filters_LiveInTheAddressAndOfferItsOwnKinds()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: SecondLooksAsync);

        var page = pages.Render<SecondLookPage>("/attention/second-look");
        Assert.Equal(3, page.FindAll(".finding-title a").Count);
        Assert.DoesNotContain(page.FindAll(".filters option"), option => option.GetAttribute("value") == FindingKinds.WaterLoss);
        Assert.Contains(page.FindAll(".filters option"), option => option.GetAttribute("value") == FindingKinds.LotShift);

        Assert.Equal(2, pages.Render<SecondLookPage>("/attention/second-look?site=YAF-1").FindAll(".finding-title a").Count);
        Assert.Single(pages.Render<SecondLookPage>("/attention/second-look?kind=lot-shift").FindAll(".finding-title a"));
        Assert.Equal("Nothing matches these filters", pages.Render<SecondLookPage>("/attention/second-look?severity=act").Find(".empty-title").TextContent);
    }

    [Fact]
    public async Task SecondLook_Several_AreClosedAtOnceWithOneReason()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: SecondLooksAsync);
        var page = pages.Render<SecondLookPage>("/attention/second-look");

        await page.FindAll(".choosing .button")[0].ClickAsync();
        await page.FindAll(".choosing .finding-acts button").Single(button => button.TextContent == "Close").ClickAsync();
        await page.Find(".choosing .finding-acts textarea").ChangeAsync("looked at with the technicians");
        await page.Find(".choosing .finding-acts form").SubmitAsync();

        var marks = await MarksAsync(pages);
        Assert.Equal(3, marks.Count);
        Assert.All(marks, mark => Assert.Equal((FindingState.Closed, "looked at with the technicians"), (mark.State, mark.Because)));
    }

    private static async Task<int?> SecondLooksAsync(ReadingFirm firm)
    {
        var (site, other) = (await firm.AddSiteAsync("YAF-1"), await firm.AddSiteAsync("NUR-1"));
        await firm.AddFindingAsync(site, FindingKinds.SecondLook, Severity.Plan, Day);
        await firm.AddFindingAsync(site, FindingKinds.LotShift, Severity.Plan, Day);
        await firm.AddFindingAsync(other, FindingKinds.SecondLook, Severity.Plan, Day);
        await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, Day);
        return null;
    }

    [Fact]
    public async Task Answer_Close_AsksForAReasonAndIsKept()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: OneFindingAsync);
        var page = pages.Render<AttentionPage>("/attention");

        await page.FindAll(".finding-acts button").Single(button => button.TextContent == "Close").ClickAsync();
        await page.Find(".finding-acts form").SubmitAsync();
        Assert.Equal("A reason is needed.", page.Find(".finding-acts [role=status]").TextContent);
        Assert.Empty(await MarksAsync(pages));

        await page.Find(".finding-acts textarea").ChangeAsync("probe renewed");
        await page.Find(".finding-acts form").SubmitAsync();

        var mark = Assert.Single(await MarksAsync(pages));
        Assert.Equal((FindingState.Closed, "probe renewed"), (mark.State, mark.Because));
    }

    [Fact]
    public async Task Answer_TakeOn_OffersPeopleInUseAndTakesTheOneChosen()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            await AddPersonAsync(firm, "RYA", "R. Yaffle", PersonRole.Technician);
            await AddPersonAsync(firm, "PUM", "P. Umber", PersonRole.Technician);
            await AddPersonAsync(firm, "OLD", "O. Ousel", PersonRole.Technician, isRetired: true);
            await AddPersonAsync(firm, "EST", "Estates office", PersonRole.Customer);
            return await OneFindingAsync(firm);
        });
        var page = pages.Render<AttentionPage>("/attention");

        await page.FindAll(".finding-acts button").Single(button => button.TextContent == "Take this on").ClickAsync();
        Assert.Equal(["P. Umber (PUM)", "R. Yaffle (myself)"], page.FindAll(".finding-acts option").Select(option => option.TextContent));
        Assert.Equal("RYA", page.Find(".finding-acts select").GetAttribute("value"));
        await page.Find(".finding-acts select").ChangeAsync("PUM");
        await page.Find(".finding-acts form").SubmitAsync();

        var mark = Assert.Single(await MarksAsync(pages));
        Assert.Equal((FindingState.Acknowledged, "PUM"), (mark.State, mark.Owner));
    }

    [Fact]
    public async Task Finding_ClosedByHand_CanBeOpenedAgainAndOneThatIsOverCannot()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var site = await firm.AddSiteAsync("YAF-1");
            await firm.AddFindingAsync(site, FindingKinds.ProbeReadsOff, Severity.Plan, Day, state: FindingState.Closed, because: "probe renewed");
            await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, Day, state: FindingState.Closed);
            return site.Customer;
        });

        var byHand = pages.Render<FindingPage>("/attention/finding?site=YAF-1&system=CT-1&kind=probe-reads-off&seen=2026-04-01");
        Assert.Equal(["Open again"], byHand.FindAll(".finding-acts button").Select(button => button.TextContent));
        Assert.Empty(pages.Render<FindingPage>("/attention/finding?site=YAF-1&system=CT-1&kind=water-loss&seen=2026-04-01").FindAll(".finding-acts"));
    }

    private static Task AddPersonAsync(ReadingFirm firm, string code, string name, PersonRole role, bool isRetired = false) => firm.AddAsync(new SetUpRow
    {
        Kind = SetUpKind.Person, Code = code, CodeKey = code, Name = name, RetiredAt = isRetired ? ReadingFirm.Start : null,
        Document = Domain.Exchange.ExchangeWriter.CanonicalOf(new Person { Code = code, Name = name, Role = role }),
    });

    private static Task<List<FindingMarkRow>> MarksAsync(ReadPages pages) => pages.Firm.Store.ReadAsync(ReadingFirm.Supervisor, db => db.FindingMarks.ToListAsync());

    [Fact]
    public async Task Answer_ChosenTogether_AsksOnceAndKeepsBoth()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var site = await firm.AddSiteAsync("YAF-1");
            await firm.AddFindingAsync(site, FindingKinds.ProbeReadsOff, Severity.Plan, Day);
            await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Act, Day);
            await firm.AddFindingAsync(site, FindingKinds.FeedLow, Severity.Watch, Day);
            return site.Customer;
        });
        var page = pages.Render<AttentionPage>("/attention");
        Assert.Empty(page.FindAll(".choosing .finding-acts"));

        await page.FindAll(".finding-choose input")[0].ChangeAsync(true);
        await page.FindAll(".finding-choose input")[1].ChangeAsync(true);
        Assert.Equal("Chosen findings: 2", page.Find(".choosing [role=status]").TextContent);
        await page.FindAll(".choosing .finding-acts button").Single(button => button.TextContent == "Close").ClickAsync();
        await page.Find(".choosing textarea").ChangeAsync("site shut for good");
        await page.Find(".choosing form").SubmitAsync();

        var marks = await MarksAsync(pages);
        Assert.Equal([FindingKinds.ProbeReadsOff, FindingKinds.WaterLoss], marks.Select(mark => mark.Kind).Order(StringComparer.Ordinal));
        Assert.All(marks, mark => Assert.Equal((FindingState.Closed, "site shut for good"), (mark.State, mark.Because)));
    }

    [Fact]
    public async Task SecondLook_StandsApartForSupervisorsAndIsNotThereForTechnicians()
    {
        static async Task<int?> FillAsync(ReadingFirm firm)
        {
            var site = await firm.AddSiteAsync("YAF-1");
            await firm.AddFindingAsync(site, FindingKinds.SecondLook, Severity.Plan, Day);
            return site.Customer;
        }

        await using var supervisor = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);
        await using var technician = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);

        Assert.Equal("/attention/second-look", supervisor.Render<AttentionPage>("/attention").Find("#second-look").GetAttribute("href"));
        Assert.Single(supervisor.Render<SecondLookPage>("/attention/second-look").FindAll(".finding"));
        Assert.Empty(technician.Render<AttentionPage>("/attention").FindAll("#second-look"));
        Assert.Empty(technician.Render<SecondLookPage>("/attention/second-look").FindAll(".finding"));
    }

    private static async Task<int?> OneFindingAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddFindingAsync(site, FindingKinds.ProbeReadsOff, Severity.Plan, Day);
        return site.Customer;
    }
}
