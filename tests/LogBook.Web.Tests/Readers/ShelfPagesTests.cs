using Bunit;
using LogBook.Application.Data;
using LogBook.Domain.Assessments;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features;
using LogBook.Web.Features.Records;
using LogBook.Web.Features.SetUp.Templates;
using LogBook.Web.Features.Shelf;

namespace LogBook.Web.Tests.Readers;

public sealed class ShelfPagesTests
{
    [Fact]
    public async Task Shelf_DrumShort_SaysRangeAndWhatToOrder()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);

        var row = pages.Render<ShelfPage>("/shelf").Find("tbody tr").TextContent.Replace('\u00a0', ' ');

        Assert.Contains("Likely empty before the next visit", row, StringComparison.Ordinal);
        Assert.Contains("19 L", row, StringComparison.Ordinal);
        Assert.Contains("Inhibitor P-40", row, StringComparison.Ordinal);
    }

    /// <summary>On the shelf and on the order: run-out and suggested order, each with formula and inputs, by pressing the litres.</summary>
    [Fact]
    public async Task Suggested_How_TellsWhatWentIntoRunOutAndOrder()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);

        AssertExplained(pages.Render<ShelfPage>("/shelf"));
        AssertExplained(pages.Render<ShelfOrderPage>("/shelf/order"));
    }

    [Fact]
    public async Task MakeUp_How_TellsTheReadingsThatTheOwnNormalRestsOn()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, Language.Portuguese, async firm =>
        {
            var customer = await FillAsync(firm);
            var at = await firm.SystemAsync("YAF-1");
            var visit = ReadingFirm.VisitOf("YAF-1", firm.Clock.GetUtcNow().UtcDateTime.AddDays(-1), 1350);
            var row = await firm.AddVisitAsync(at, visit);
            await firm.AddAsync(new FigureRow
            {
                CustomerId = at.Customer, SiteId = at.Site, SystemId = at.System, VisitRowId = row, Code = FigureCodes.MakeUpShift, About = TestCodes.Conductivity, To = visit.Arrived.Utc, Value = 13.3, StandardUncertainty = 2, Unit = "%",
                Inputs = """[{"name":"now","value":340,"unit":"uS/cm","standardUncertainty":6},{"name":"usual","value":300,"unit":"uS/cm"},{"name":"spread","value":6,"unit":"uS/cm"},{"name":"own-reading:2025-03-03","value":298,"unit":"uS/cm"},{"name":"own-reading:2025-03-31","value":302,"unit":"uS/cm"}]""",
            });
            return customer;
        });
        var page = pages.Render<MakeUpPage>("/shelf/make-up");

        page.Find("tbody button.quiet").Click();

        var answer = page.Find(".explained");
        Assert.Contains(TestTexts.NameOf(TestCodes.Conductivity).Pt, answer.QuerySelector("h3")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["Fórmula", "O que entrou", "Incerteza", "Fonte"], answer.QuerySelectorAll("dt").Select(term => term.TextContent));
        Assert.Equal(
            ["leitura: 340 ± 12 µS/cm", "valor habitual próprio: 300 µS/cm", "dispersão própria: 6 µS/cm", "leitura própria de 03/03/2025: 298 µS/cm", "leitura própria de 31/03/2025: 302 µS/cm"],
            answer.QuerySelectorAll("li").Select(input => input.TextContent.Replace('\u00a0', ' ')));
    }

    private static void AssertExplained<T>(IRenderedComponent<T> page)
        where T : Microsoft.AspNetCore.Components.IComponent
    {
        page.Find("tbody button.quiet").Click();

        var answer = page.Find(".explained");
        var inputs = answer.QuerySelectorAll("li").Select(input => input.TextContent.Replace('\u00a0', ' ')).ToList();
        Assert.Equal(2, answer.QuerySelectorAll("h3").Length);
        Assert.Equal(2, answer.QuerySelectorAll("dt").Count(term => term.TextContent == "Formula"));
        Assert.Contains(FigureTexts.ExplanationOf(FigureCodes.ProductMissing)!.Formula.En, answer.TextContent, StringComparison.Ordinal);
        Assert.Contains("usable volume: 12.0 ± 1.0 L", inputs);
        Assert.Contains("use a day: 2.00 ± 0.20 L/day", inputs);
        Assert.Contains("suggested order: 19 L", inputs);
        Assert.Contains(inputs, input => input.StartsWith("empty after, earliest: 5.", StringComparison.Ordinal));
        Assert.Contains(inputs, input => input.StartsWith("empty after, latest: 6.", StringComparison.Ordinal));
        Assert.Contains(inputs, input => input.StartsWith("days of running: ", StringComparison.Ordinal));

        page.Find(".explained button").Click();

        Assert.Empty(page.FindAll(".explained"));
    }

    [Fact]
    public async Task Order_ByProductAndByRoute_AreTheSameDrums()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, Language.Spanish, FillAsync);

        Assert.Contains("Inhibitor P-40", pages.Render<ShelfOrderPage>("/shelf/order").Find("h2").TextContent, StringComparison.Ordinal);
        Assert.Equal("RYA", pages.Render<ShelfOrderPage>("/shelf/order?by=route").Find("h2").TextContent);
        Assert.Contains("lea la etiqueta", pages.Render<ShelfOrderPage>("/shelf/order").Find(".caution").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Order_MoreLinesThanThePageShows_TotalCountsThemAllAndTheCutIsSaid()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: firm => FillAsync(firm, drums: 203));

        var page = pages.Render<ShelfOrderPage>("/shelf/order");

        // 203 drums of 19 L each.
        Assert.Equal(200, page.FindAll("tbody tr").Count);
        Assert.Equal("Inhibitor P-40: 3857 L in all", page.Find("h2").TextContent.Replace('\u00a0', ' ').Replace(",", "", StringComparison.Ordinal));
        Assert.Contains("The first 200 of 203", page.Find("#order-cut").TextContent, StringComparison.Ordinal);
        Assert.Empty(pages.Render<ShelfOrderPage>("/shelf/order?product=N-15").FindAll("#order-cut"));
    }

    [Fact]
    public async Task Empty_SaysWhatWouldStandHere()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor);

        Assert.Equal("No drum on file", pages.Render<ShelfPage>("/shelf").Find(".empty-title").TextContent);
        Assert.Equal("No make-up can be compared yet", pages.Render<MakeUpPage>("/shelf/make-up").Find(".empty-title").TextContent);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Customer_SeesNeitherShelfNorRecords()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: FillAsync);

        Assert.DoesNotContain("D-INH", pages.Render<ShelfPage>("/shelf").Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("YAF-1 ", pages.Render<ProbePage>("/sites/YAF-1/systems/CT-1/probe", ("Code", "YAF-1"), ("System", "CT-1")).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Records_WithoutReadings_SayWhatIsMissing()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: FillAsync);

        Assert.Equal("No probe was compared yet", pages.Render<ProbePage>("/sites/YAF-1/systems/CT-1/probe", ("Code", "YAF-1"), ("System", "CT-1")).Find(".empty-title").TextContent);
        Assert.Equal("No water meter was read yet", pages.Render<MetersPage>("/sites/YAF-1/systems/CT-1/meters", ("Code", "YAF-1"), ("System", "CT-1")).Find(".empty-title").TextContent);
        Assert.Equal("No pump output is known yet", pages.Render<PumpsPage>("/sites/YAF-1/systems/CT-1/pumps", ("Code", "YAF-1"), ("System", "CT-1")).Find(".empty-title").TextContent);
    }

    [Theory]
    [InlineData(FindingKinds.RunsOut, "/shelf?site=YAF-1")]
    [InlineData(FindingKinds.MakeUpChanged, "/shelf/make-up?site=YAF-1")]
    public void Finding_LeadsToTheShelf(string kind, string address) =>
        Assert.Equal(address, Assert.Single(FindingLinks.Of(new LogBook.Application.Reviews.FindingKey("YAF-1", "CT-1", kind, "", new DateOnly(2026, 1, 1)), true)).Address);

    [Fact]
    public async Task Templates_AllAreOffMarkedAndSourced_UntilOneIsTakenOver()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: FillAsync);
        var page = pages.Render<TemplatesPage>("/setup/rules/templates");

        var items = page.FindAll("section:not([aria-labelledby=promises]) .templates > li");
        Assert.Equal(RuleTemplates.All.Count, items.Count);
        Assert.All(items, item =>
        {
            Assert.Contains("Check with the authority", item.TextContent, StringComparison.Ordinal);
            Assert.Contains("Source: ", item.TextContent, StringComparison.Ordinal);
            Assert.Contains("Off", item.TextContent, StringComparison.Ordinal);
        });
        Assert.Contains("Unconfirmed", items.Single(item => item.TextContent.Contains("UK-LEG", StringComparison.Ordinal)).TextContent, StringComparison.Ordinal);

        page.FindAll(".templates button").First(button => button.TextContent.Contains("Victoria, Legionella", StringComparison.Ordinal)).Click();
        page.Find("#adopt-checked").Change("I. Wendle asked on 20 March");
        page.Find("fieldset input").Change(true);
        await page.Find("form.confirm").SubmitAsync();

        page.WaitForAssertion(() => Assert.Contains("Taken over: version from", page.Markup, StringComparison.Ordinal), TimeSpan.FromSeconds(20));
        Assert.Contains("1 systems", page.Markup, StringComparison.Ordinal);
    }

    private static Task<int?> FillAsync(ReadingFirm firm) => FillAsync(firm, drums: 1);

    private static async Task<int?> FillAsync(ReadingFirm firm, int drums)
    {
        var at = await firm.AddSiteAsync("YAF-1");
        await firm.AddAsync(new SetUpRow { Kind = SetUpKind.Product, Code = "P-40", CodeKey = "P-40", Name = "Inhibitor P-40", Document = ExchangeWriter.CanonicalOf(new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor }) });
        var codes = Enumerable.Range(0, drums).Select(i => i == 0 ? "D-INH" : $"D-{i}").ToList();
        await firm.Store.WriteAsync(Viewer.System("test"), async db =>
        {
            var system = await db.Systems.FindAsync(at.System);
            system!.Document = ExchangeWriter.CanonicalOf(ExchangeReader.Parse<WaterSystem>(system.Document) with
            {
                VolumeL = 10_000, Drums = [.. codes.Select(code => new Drum { Code = code, Product = "P-40", Shape = DrumShape.VerticalCylinder, HeightCm = 62, CapacityL = 60 })],
            });
        });
        var visit = ReadingFirm.VisitOf("YAF-1", firm.Clock.GetUtcNow().UtcDateTime.AddDays(-2), 1350);
        var row = await firm.AddVisitAsync(at, visit);
        await firm.Store.WriteAsync(Viewer.System("test"), db =>
        {
            db.Figures.AddRange(codes.Select(code => new FigureRow
            {
                CustomerId = at.Customer, SiteId = at.Site, SystemId = at.System, VisitRowId = row, Code = "days-to-empty", About = code, To = visit.Arrived.Utc, Value = 6, StandardUncertainty = 0.3, Unit = "d",
                Inputs = """[{"name":"usable","value":12,"unit":"L","standardUncertainty":0.5},{"name":"use-per-day","value":2,"unit":"L/d","standardUncertainty":0.1}]""",
            }));
            return Task.CompletedTask;
        });
        return at.Customer;
    }
}
