using Bunit;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
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
