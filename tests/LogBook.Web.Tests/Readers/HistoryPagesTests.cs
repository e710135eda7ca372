using Bunit;
using LogBook.Application.Data;
using LogBook.Application.History;
using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
using LogBook.Web.Features.History;

namespace LogBook.Web.Tests.Readers;

public sealed class HistoryPagesTests
{
    private const string Address = "/sites/YAF-1/systems/CT-1?from=2025-03-01&to=2025-05-31";

    [Fact]
    [Trait("goal", "U7")]
    public async Task History_Always_HasItsSentenceAndItsTable()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ThreeVisitsAsync);

        var page = pages.Render<HistoryPage>(Address, ("Code", "YAF-1"), ("System", "CT-1"));

        Assert.Contains("Conductivity, tower water: 3 readings, 1340 to 1500\u00a0µS/cm, last 1350\u00a0µS/cm. 1 outside the range in force.", page.Find("#chart-summary").TextContent, StringComparison.Ordinal);
        page.Find("details.chart-table").TriggerEvent("ontoggle", EventArgs.Empty);

        // Three readings and one figure of cycles.
        Assert.Equal(4, page.FindAll(".chart-table tbody tr").Count);
        Assert.Contains(page.FindAll(".chart-table tbody tr"), row => row.TextContent.Contains("above", StringComparison.Ordinal));
    }

    [Fact]
    public async Task History_FigurePressed_ExplainsHowItWasWorkedOut()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ThreeVisitsAsync);
        var page = pages.Render<HistoryPage>(Address, ("Code", "YAF-1"), ("System", "CT-1"));

        page.Find("table.figures button").Click();

        var told = page.Find(".explained").TextContent;
        Assert.Contains(FigureTexts.ExplanationOf(FigureCodes.CyclesByConductivity)!.Source.En, told, StringComparison.Ordinal);
        Assert.Contains("1361", told, StringComparison.Ordinal);
        Assert.Contains("4.54\u00a0±\u00a00.10", told, StringComparison.Ordinal);
    }

    [Fact]
    public async Task History_EmptyPeriod_SaysSo()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ThreeVisitsAsync);

        var page = pages.Render<HistoryPage>("/sites/YAF-1/systems/CT-1?from=2024-01-01&to=2024-02-01", ("Code", "YAF-1"), ("System", "CT-1"));

        Assert.Equal("Nothing was read in this period", page.Find(".empty-title").TextContent);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task History_ForeignCustomer_IsAbsent()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: async firm =>
        {
            await ThreeVisitsAsync(firm);
            return (await firm.AddSiteAsync("NUR-1")).Customer;
        });

        Assert.Equal("Nothing here", pages.Render<HistoryPage>(Address, ("Code", "YAF-1"), ("System", "CT-1")).Find("h1").TextContent);
        Assert.Equal("Nothing here", pages.Render<SheetPage>("/sites/YAF-1/systems/CT-1/sheet", ("Code", "YAF-1"), ("System", "CT-1")).Find("h1").TextContent);
    }

    [Fact]
    public async Task History_ManyFindings_ShowsTheNewestAndTheOthersWhenAskedFor()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var customer = await ThreeVisitsAsync(firm);
            var site = await firm.SystemAsync("YAF-1");
            for (var day = 0; day < 23; day++)
            {
                await firm.AddFindingAsync(site, LogBook.Domain.Findings.FindingKinds.ProbeReadsOff, LogBook.Domain.Findings.Severity.Watch, new DateOnly(2025, 3, 3).AddDays(day));
            }

            return customer;
        });

        var page = pages.Render<HistoryPage>("/sites/YAF-1/systems/CT-1?from=2025-03-01&to=2025-05-31", ("Code", "YAF-1"), ("System", "CT-1"));

        Assert.Equal(20, page.FindAll("li.finding").Count);
        Assert.Contains("25 Mar 2025", page.Find("li.finding").TextContent, StringComparison.Ordinal);
        Assert.Equal("Show earlier findings (3)", page.Find("#earlier-findings").TextContent);
        page.Find("#earlier-findings").Click();
        Assert.Equal(23, page.FindAll("li.finding").Count);
        Assert.Empty(page.FindAll("#earlier-findings"));
    }

    [Fact]
    public async Task Sheet_ValueOutside_IsMarkedByShapeAndWord()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ThreeVisitsAsync);

        var page = pages.Render<SheetPage>("/sites/YAF-1/systems/CT-1/sheet", ("Code", "YAF-1"), ("System", "CT-1"));

        var outside = Assert.Single(page.FindAll("td.outside"));
        Assert.Equal(["1500", "▲", "above"], outside.TextContent.Replace("▲", " ▲ ", StringComparison.Ordinal).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Equal(["RYA", "RYA", "RYA"], page.FindAll("tfoot td.figure").Select(cell => cell.TextContent));
    }

    [Fact]
    [Trait("goal", "U7")]
    public async Task ChartModel_Gap_BreaksTheLineAndDisplayIsHollow()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        foreach (var week in new[] { 0, 1, 2, 3, 6 })
        {
            var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7 * week), 1350);
            var display = new Reading { At = "tower", Test = "conductivity", Source = ReadingSource.Controller, Value = 1340, Unit = "uS/cm", Qualifier = week == 2 ? ">" : null };
            await firm.AddVisitAsync(site, visit with { Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings, display] }] });
        }

        var view = await new SiteHistoryQuery(firm.Store, firm.Clock).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", new DateOnly(2025, 3, 1), new DateOnly(2025, 5, 31));
        var panel = Assert.Single(ChartModels.Of(view!, Language.Portuguese).Panels);

        Assert.Equal("Condutividade, água da torre", panel.Title);
        Assert.Equal([false, false, false, false, true, false], panel.Series[0].Points.Select(point => point.Value is null));
        Assert.Equal((false, true), (panel.Series[0].Hollow, panel.Series[1].Hollow));
        Assert.Equal(">", panel.Series[1].Points[2].Qualifier);
    }

    private static async Task<int?> ThreeVisitsAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1340));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7), 1500));
        var last = ReadingFirm.Start.AddDays(14);
        var row = await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", last, 1350));
        await firm.AddAsync(new FigureRow
        {
            CustomerId = site.Customer, SiteId = site.Site, SystemId = site.System, VisitRowId = row, Code = FigureCodes.CyclesByConductivity, To = last, Value = 4.536, StandardUncertainty = 0.052, Unit = "1",
            Inputs = """[{"name":"tower","value":1361,"unit":"uS/cm","standardUncertainty":null}]""",
        });
        return site.Customer;
    }
}
