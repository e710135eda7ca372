using System.Globalization;
using Bunit;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
using LogBook.Web.Features;
using LogBook.Web.Features.Clocks;

namespace LogBook.Web.Tests.Readers;

public sealed class ClocksPagesTests
{
    private static readonly Rule Leg = new()
    {
        Code = "OXT-LEG",
        Name = "Oxterhelm Code, Legionella",
        Jurisdiction = "Oxterhelm",
        From = new DateOnly(2024, 7, 1),
        Test = TestCodes.Legionella,
        RetestDays = [3, 7],
        Bands = [new RuleBand { From = 20, Unit = "[CFU]/mL", Severity = Severity.Plan, Says = "disinfect" }, new RuleBand { From = 1000, Unit = "[CFU]/mL", Severity = Severity.Act, NotifyWithinHours = 24, Says = "notify" }],
    };

    private static readonly Guid Sampled = Guid.CreateVersion7(new DateTimeOffset(ReadingFirm.Start.AddDays(398), TimeSpan.Zero));

    [Fact]
    public async Task Clocks_Supervisor_SeesStateRuleVersionAndTimeInWords()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);

        var rows = pages.Render<ClocksPage>("/clocks").FindAll("tbody tr");

        Assert.Equal(2, rows.Count);
        Assert.Contains("Missed", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("tell the authority within 24 hours of receipt", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("Oxterhelm Code, Legionella, version from 1 Jul 2024", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("22 hours over", rows[0].TextContent, StringComparison.Ordinal);
        Assert.Contains("Visit every 7 days", rows[1].TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Clocks_FilterThatMatchesNothing_OffersAllAgain()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, Language.Spanish, FillAsync);

        Assert.Equal("/clocks", pages.Render<ClocksPage>("/clocks?state=met&kind=retest").Find(".empty a").GetAttribute("href"));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Clocks_Customer_AreNotThere()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: FillAsync);

        Assert.DoesNotContain("OXT", pages.Render<ClocksPage>("/clocks").Markup, StringComparison.OrdinalIgnoreCase);
        Assert.Empty(pages.Render<SiteClocksPage>("/sites/YAF-1/clocks", ("Code", "YAF-1")).FindAll(".count-response"));
    }

    [Fact]
    public async Task Site_NewestCount_ShowsUnitsBandCautionAndWhatIsOpen()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);

        var page = pages.Render<SiteClocksPage>("/sites/YAF-1/clocks", ("Code", "YAF-1"));

        var response = page.Find(".count-response").TextContent;
        Assert.Contains("1500 CFU/mL = 150,000 CFU/100 mL = 1,500,000 CFU/L", response.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.Contains("Act: from 1000 CFU/mL on", response.Replace('\u00a0', ' '), StringComparison.Ordinal);
        Assert.Contains("A count is not a diagnosis", page.Find(".caution").TextContent, StringComparison.Ordinal);
        Assert.Contains("LogBook does not notify anybody", page.Find(".notice-form").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Site_NotificationWrittenDown_IsMetAndOnRecord()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);
        var page = pages.Render<SiteClocksPage>("/sites/YAF-1/clocks", ("Code", "YAF-1"));

        page.Find("[id$='-to']").Change("Oxterhelm health office");
        page.Find("[id$='-how']").Change("by telephone, reference OX-114");
        await page.Find(".notice-form form").SubmitAsync();

        page.WaitForAssertion(() => Assert.Contains("Oxterhelm health office", page.Find(".count-response").TextContent, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        Assert.Contains("after its time", page.Find(".count-response .rows").TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(FindingKinds.ProbeFouled, "/sites/YAF-1/systems/CT-1/probe")]
    [InlineData(FindingKinds.PulsesLost, "/sites/YAF-1/systems/CT-1/meters")]
    [InlineData(FindingKinds.PumpOutput, "/sites/YAF-1/systems/CT-1/pumps")]
    [InlineData(FindingKinds.ClockDue, "/sites/YAF-1/clocks")]
    [InlineData(FindingKinds.MicrobiologyHigh, "/sites/YAF-1/clocks")]
    public void Finding_LeadsToItsRecord(string kind, string address) =>
        Assert.Equal(address, Assert.Single(FindingLinks.Of(new FindingKey("YAF-1", "CT-1", kind, "", new DateOnly(2026, 1, 1)), true)).Address);

    private static async Task<int?> FillAsync(ReadingFirm firm)
    {
        var now = firm.Clock.GetUtcNow().UtcDateTime;
        await firm.AddAsync(new SetUpRow { Kind = SetUpKind.Rule, Code = Leg.Code, CodeKey = Leg.Code, From = Leg.From, Name = Leg.Name, Document = ExchangeWriter.CanonicalOf(Leg) });
        var at = await firm.AddSiteAsync("YAF-1");
        await firm.Store.WriteAsync(Viewer.System("test"), async db =>
        {
            var system = await db.Systems.FindAsync(at.System);
            system!.Document = ExchangeWriter.CanonicalOf(ExchangeReader.Parse<WaterSystem>(system.Document) with { Rules = [Leg.Code] });
        });
        var received = now.AddHours(-46);
        var visit = ReadingFirm.VisitOf("YAF-1", now.AddDays(-2), 1350, id: Sampled);
        visit = visit with
        {
            Systems = [visit.Systems[0] with { Readings = [new Reading { At = "tower", Test = TestCodes.Legionella, Source = ReadingSource.Lab, Value = 1500, Unit = "[CFU]/mL", ResultAt = Moment.OfUtc(received), ReceivedAt = Moment.OfUtc(received) }] }],
        };
        await firm.AddVisitAsync(at, visit);
        await firm.AddAsync(new ClockRow
        {
            CustomerId = at.Customer, SystemId = at.System, EngineVersion = "1",
            Clocks = string.Create(
                CultureInfo.InvariantCulture,
                $$"""[{"kind":"Notify","since":"{{received:O}}","soon":"{{received.AddHours(18):O}}","due":"{{received.AddHours(24):O}}","days":1,"rule":"OXT-LEG","ruleFrom":"2024-07-01","visit":"{{Sampled}}"}]"""),
        });
        return at.Customer;
    }
}
