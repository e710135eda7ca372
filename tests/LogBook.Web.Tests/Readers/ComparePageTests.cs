using Bunit;
using LogBook.Application.Data;
using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;
using LogBook.Web.Features.History;

namespace LogBook.Web.Tests.Readers;

public sealed class ComparePageTests
{
    private const string Address = "/history/compare?systems=YAF-1%2FCT-1,NUR-1%2FCT-1&from=2025-03-01&to=2025-05-31";

    [Fact]
    [Trait("goal", "U7")]
    public async Task Compare_TwoSystems_SaysEachInWordsShapesAndATable()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: TwoSitesAsync);

        var page = pages.Render<ComparePage>(Address);

        Assert.Equal(
            "1 Mar 2025 to 31 May 2025. YAF-1 Cooling tower 1: 2 values, 1340 to 1360\u00a0µS/cm, last 1360\u00a0µS/cm. NUR-1 Cooling tower 1: one value, 1400\u00a0µS/cm.",
            page.Find("#chart-summary").TextContent);
        Assert.Equal(2, page.FindAll(".chart-legend .series-shape").Count);
        page.Find("details.chart-table").TriggerEvent("ontoggle", EventArgs.Empty);
        Assert.Equal(3, page.FindAll(".chart-table tbody tr").Count);
        Assert.Single(page.FindAll("[data-act=picture]"));
    }

    [Fact]
    public async Task Compare_Figures_StandSideBySideWithUncertaintyAndAreOffered()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            await TwoSitesAsync(firm);
            var other = await firm.SystemAsync("NUR-1");
            var end = ReadingFirm.Start.AddDays(14);
            var row = await firm.AddVisitAsync(other, ReadingFirm.VisitOf("NUR-1", end, 1400));
            await firm.AddAsync(new FigureRow
            {
                CustomerId = other.Customer, SiteId = other.Site, SystemId = other.System, VisitRowId = row, Code = FigureCodes.MakeUp, From = end.AddDays(-7), To = end, Value = 70_000, StandardUncertainty = 700, Unit = "L",
            });
            return null;
        });

        var page = pages.Render<ComparePage>(Address + "&test=figures.make-up-per-day");

        Assert.Equal(["Readings", "Worked out between visits"], page.FindAll("#compare-reading optgroup").Select(group => group.GetAttribute("label")));
        Assert.Equal("Make-up a day", page.Find("#compare-reading option[selected]").TextContent);
        Assert.Contains("NUR-1 Cooling tower 1: one value, 10.00\u00a0±\u00a00.20\u00a0m³/day.", page.Find("#chart-summary").TextContent, StringComparison.Ordinal);
        var row = page.FindAll("table.compared tbody tr").Single(line => line.TextContent.Contains("Make-up a day", StringComparison.Ordinal));
        Assert.Equal(
            ["20.0\u00a0±\u00a00.4\u00a0m³/day10 Mar 2025", "10.00\u00a0±\u00a00.20\u00a0m³/day17 Mar 2025", "10.0\u00a0±\u00a00.4\u00a0m³/daylarger than its uncertainty"],
            row.QuerySelectorAll("td").Select(cell => cell.TextContent.Trim()));
        Assert.Contains(page.FindAll("table.compared tbody tr"), line => line.TextContent.Contains("Bleed hours", StringComparison.Ordinal) && line.TextContent.Contains('–', StringComparison.Ordinal));
    }

    /// <summary>Each figure and the difference open, with formula, what went in, uncertainty and source; pressed again they close.</summary>
    [Fact]
    public async Task Compare_HowOfAFigure_TellsFormulaAndInputsOfThatSystem()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, Language.Spanish, async firm =>
        {
            await TwoSitesAsync(firm);
            var other = await firm.SystemAsync("NUR-1");
            var end = ReadingFirm.Start.AddDays(14);
            var row = await firm.AddVisitAsync(other, ReadingFirm.VisitOf("NUR-1", end, 1400));
            await firm.AddAsync(new FigureRow
            {
                CustomerId = other.Customer, SiteId = other.Site, SystemId = other.System, VisitRowId = row, Code = FigureCodes.MakeUp, From = end.AddDays(-7), To = end, Value = 70_000, StandardUncertainty = 700, Unit = "L",
            });
            return null;
        });
        var page = pages.Render<ComparePage>(Address);
        AngleSharp.Dom.IElement Row() => page.FindAll("table.compared tbody tr").First(line => line.TextContent.Contains("Reposición por día", StringComparison.Ordinal));

        Row().QuerySelectorAll("button")[1].Click();

        var answer = page.Find(".explained");
        Assert.Contains("NUR-1", answer.QuerySelector("h3")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["Fórmula", "Datos de entrada", "Incertidumbre", "Fuente"], answer.QuerySelectorAll("dt").Select(term => term.TextContent));
        Assert.Contains(FigureTexts.ExplanationOf(FigureCodes.MakeUpPerDay)!.Formula.Es, answer.TextContent, StringComparison.Ordinal);
        Assert.Equal(["reposición: 70 000 ± 1400 L", "días del intervalo: 7 d"], InputsOf(answer));

        Row().QuerySelectorAll("button")[2].Click();

        answer = page.Find(".explained");
        Assert.Contains("Primero menos segundo", answer.QuerySelector("h3")!.TextContent, StringComparison.Ordinal);
        Assert.Equal(["primer sistema: 20,0 ± 0,4 m³/día", "segundo sistema: 10,00 ± 0,20 m³/día"], InputsOf(answer));

        Row().QuerySelectorAll("button")[2].Click();

        Assert.Empty(page.FindAll(".explained"));
    }

    [Fact]
    public async Task Compare_NothingChosen_SaysWhatToDo()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: TwoSitesAsync);

        Assert.Equal("Choose two or three systems", pages.Render<ComparePage>("/history/compare").Find(".empty-title").TextContent);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Compare_Customer_IsOfferedOwnSystemsOnly()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Customer, fill: TwoSitesAsync);

        Assert.DoesNotContain("NUR-1", pages.Render<ComparePage>(Address).Find("form").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    [Trait("goal", "U7")]
    public async Task History_Figures_AreLinesWithUncertaintyAndColumns()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: TwoSitesAsync);

        var page = pages.Render<HistoryPage>("/sites/YAF-1/systems/CT-1?from=2025-03-01&to=2025-05-31&show=figures.bleed-hours,figures.water", ("Code", "YAF-1"), ("System", "CT-1"));

        // 140 m3 and 30 h in seven days.
        Assert.Contains("Bleed hours for each m³ of make-up: one value, 0.214", page.Find("#chart-summary").TextContent, StringComparison.Ordinal);
        Assert.Contains("Make-up a day: one value, 20.0\u00a0±\u00a00.4\u00a0m³/day.", page.Find("#chart-summary").TextContent, StringComparison.Ordinal);
        Assert.Contains("Bleed hours for each m³ of make-up", page.Find("table.figures thead").TextContent, StringComparison.Ordinal);
        Assert.Contains("upright line: expanded uncertainty", page.Find(".chart-legend").TextContent, StringComparison.Ordinal);
    }

    // Spaces that do not break, wide or narrow, read like any other.
    private static IEnumerable<string> InputsOf(AngleSharp.Dom.IElement answer) =>
        answer.QuerySelectorAll("li").Select(input => input.TextContent.Replace('\u00a0', ' ').Replace('\u202f', ' '));

    private static async Task<int?> TwoSitesAsync(ReadingFirm firm)
    {
        var (own, other) = (await firm.AddSiteAsync("YAF-1"), await firm.AddSiteAsync("NUR-1", "Nurlescombe General Hospital"));
        await firm.AddVisitAsync(own, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1340));
        var (from, to) = (ReadingFirm.Start, ReadingFirm.Start.AddDays(7));
        var row = await firm.AddVisitAsync(own, ReadingFirm.VisitOf("YAF-1", to, 1360));
        await firm.AddVisitAsync(other, ReadingFirm.VisitOf("NUR-1", to, 1400));
        foreach (var (code, value, uncertainty, unit) in new[] { (FigureCodes.MakeUp, 140_000.0, 1_400.0, "L"), (FigureCodes.BleedHours, 30, 0.3, "h") })
        {
            await firm.AddAsync(new FigureRow
            {
                CustomerId = own.Customer, SiteId = own.Site, SystemId = own.System, VisitRowId = row, Code = code, From = from, To = to, Value = value, StandardUncertainty = uncertainty, Unit = unit,
            });
        }

        return own.Customer;
    }
}
