using Bunit;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
using LogBook.Web.Components;
using LogBook.Web.Features.Sites;
using LogBook.Web.Features.TakeOver;

namespace LogBook.Web.Tests.Readers;

public sealed class TakeOverPageTests
{
    private const string Address = "/sites/YAF-1/take-over";

    [Fact]
    public async Task Pack_TellsStoryNotesAndWhatIsOpen_NewestFirst()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);

        var page = pages.Render<TakeOverPage>(Address, ("Code", "YAF-1"));
        var story = page.FindAll("section[aria-labelledby=story] li").Select(line => line.TextContent.Replace('\u00a0', ' ')).ToList();
        var notes = page.FindAll("section[aria-labelledby=notes] li").Select(line => line.TextContent).ToList();

        Assert.Equal(2, story.Count);
        Assert.Contains("Settings lost, still open", story[0], StringComparison.Ordinal);
        Assert.Contains("set point: 1000 µS/cm → 1350 µS/cm", story[1], StringComparison.Ordinal);

        // The same words of two visits are told once, with the newer day.
        var note = Assert.Single(notes);
        Assert.Contains("the roof hatch sticks", note, StringComparison.Ordinal);
        Assert.Contains("No contact on file", page.Markup, StringComparison.Ordinal);
        Assert.Contains("Ask the supervisor before you go", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pack_OfANewSite_SaysThatNothingIsRecorded()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, Language.Portuguese, async firm => (await firm.AddSiteAsync("YAF-1")).Customer);

        var page = pages.Render<TakeOverPage>(Address, ("Code", "YAF-1"));

        Assert.StartsWith("Pacote de passagem", page.Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Contains("Nada registrado neste período.", page.Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Pack_OnePress_HandsTheWholePatchToTheTechnicianWithTheFewestSitesAndBack()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: PatchAsync);
        var page = pages.Render<TakeOverPage>(Address, ("Code", "YAF-1"));
        Assert.Equal("Hand all sites of R. Yaffle to T. Nurle: 2", page.Find("#patch-all").TextContent);

        await page.Find("#patch-all").ClickAsync(new());

        page.WaitForAssertion(() => Assert.Equal("Now on the round of T. Nurle: NUR-1, YAF-1.", page.Find("#patch-said").TextContent));
        page.WaitForAssertion(() => Assert.Contains("T. Nurle", page.Find(".facts").TextContent, StringComparison.Ordinal));
        Assert.Empty(page.FindAll("#patch-all"));
        await page.Find("#patch-back").ClickAsync(new());
        page.WaitForAssertion(() => Assert.Equal("Hand all sites of R. Yaffle to T. Nurle: 2", page.Find("#patch-all").TextContent));
    }

    [Fact]
    public async Task Pack_Technician_MayNotHandAPatchOver()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: PatchAsync);

        var page = pages.Render<TakeOverPage>(Address, ("Code", "YAF-1"));

        Assert.Contains("R. Yaffle", page.Find(".facts").TextContent, StringComparison.Ordinal);
        Assert.Empty(page.FindAll("#patch-all, #patch-back"));
    }

    [Fact]
    public async Task Pack_ClosedToday_SaysSoBesideTheWeekdayAtTheSite()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: async firm =>
        {
            await firm.AddSiteAsync("YAF-1");
            var today = DateOnly.FromDateTime(firm.Clock.GetUtcNow().UtcDateTime);
            var days = new Application.Planning.DaysOffStore(firm.Store, new(firm.Store, firm.Clock), firm.Clock);
            await days.SaveAsync(ReadingFirm.Supervisor, new(Domain.Rounds.Planning.DaysOffKind.Site, "YAF-1", today, today) { Reason = Domain.Rounds.Planning.OffReason.NoAccess }, 0);
            return null;
        });

        var getting = pages.Render<TakeOverPage>(Address, ("Code", "YAF-1")).Find(".facts").TextContent;

        Assert.Contains(pages.Firm.Clock.GetUtcNow().UtcDateTime.DayOfWeek.ToString(), getting, StringComparison.Ordinal);
        Assert.Contains("no access", getting, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("Gate: 0163 296 0100, ask for keys", "0163 296 0100", "01632960100")]
    [InlineData("+44 (0)1632 960-100", "+44 (0)1632 960-100", "+441632960100")]
    [InlineData("(01632) 960100.", "(01632) 960100", "01632960100")]
    [InlineData("0800-1700 and 06.30-18.00, since 2025-03-31, hatch 4", null, null)]
    public void PhoneNumbers_InNotes_AreFoundAndHoursAreNot(string notes, string? shown, string? dialled)
    {
        var parts = PhoneNumbers.Parts(notes).ToList();

        Assert.Equal(notes, string.Concat(parts.Select(part => part.Words)));
        var number = parts.SingleOrDefault(part => part.Number is not null);
        Assert.Equal((shown, dialled), (number.Words, number.Number));
    }

    [Theory]
    [InlineData(PersonRole.Customer)]
    [InlineData(PersonRole.SiteStaff)]
    [Trait("goal", "S1")]
    public async Task Pack_CustomersAccount_SeesNothing(PersonRole role)
    {
        await using var pages = await ReadPages.ForAsync(role, fill: FillAsync);

        Assert.Equal("Nothing here", pages.Render<TakeOverPage>(Address, ("Code", "YAF-1")).Find("h1").TextContent);
        Assert.DoesNotContain("/take-over", pages.Render<SiteCardPage>("/sites/YAF-1", ("Code", "YAF-1")).Markup, StringComparison.Ordinal);
    }

    private static async Task<int?> PatchAsync(ReadingFirm firm)
    {
        await firm.AddPeopleAsync(
            new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician },
            new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician },
            new Person { Code = "TNU", Name = "T. Nurle", Role = PersonRole.Technician });
        foreach (var (code, person) in new[] { ("YAF-1", "RYA"), ("NUR-1", "RYA"), ("GRO-1", "PUM") })
        {
            await firm.AddSiteAsync(code, assignedTo: person);
        }

        return null;
    }

    private static async Task<int?> FillAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        var first = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(200), 1340);
        var second = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(214), 1340);
        await firm.AddVisitAsync(site, first with { Notes = "the roof hatch sticks" });
        await firm.AddVisitAsync(site, second with
        {
            Notes = "the roof hatch sticks ",
            Systems = [second.Systems[0] with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1000), Left = SettingValue.Of(1350), Unit = "uS/cm", Step = 1 }] }],
        });
        await firm.AddFindingAsync(site, FindingKinds.SettingsLost, Severity.Act, DateOnly.FromDateTime(ReadingFirm.Start.AddDays(215)));
        return site.Customer;
    }
}
