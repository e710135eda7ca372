using System.Text;
using LogBook.Application.Data;
using LogBook.Application.DueLists;
using LogBook.Application.Shelf;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Shelf;

public sealed class ShelfQueryTests
{
    private static readonly System.Text.Json.JsonSerializerOptions Json = new(System.Text.Json.JsonSerializerDefaults.Web);

    private static readonly DateTime Now = ReadingFirm.Start.AddDays(400);

    [Fact]
    public async Task List_NewestReadingCounts_AndSuggestsUntilTheVisitAfterNext()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var yaf = await AddAsync(firm, "YAF-1", every: 7);
        await ReadAsync(firm, yaf, "YAF-1", daysAgo: 20, usable: 50, perDay: 1);
        await ReadAsync(firm, yaf, "YAF-1", daysAgo: 2, usable: 12, perDay: 2);

        var line = Assert.Single((await Query(firm).ListAsync(ReadingFirm.Technician, new ShelfFilter()))!.Rows);

        // Read two days ago at nine: the visit after next begins 13.6 days after that. 13.6 × 2 L − 12 L = 15.2 L; u² = (13.6 × 0.1)² + 0.5², so 15.2 + 2 × 1.45 = 18.1.
        Assert.Equal((12.0, 19.0, StockStanding.BeforeNext), (line.Outlook!.Usable.Value, line.SuggestedL!.Value, line.Standing));
        Assert.Equal("Inhibitor P-40", line.ProductName);
        Assert.Equal(8, line.Outlook.UsableAt(Now)!.Value, 6);
    }

    [Fact]
    public async Task List_NeverRead_IsUnknownAndSuggestsNothing()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await AddAsync(firm, "YAF-1", every: 7);

        var list = (await Query(firm).ListAsync(ReadingFirm.Technician, new ShelfFilter()))!;

        Assert.Equal((StockStanding.Unknown, (double?)null), (Assert.Single(list.Rows).Standing, list.Rows[0].SuggestedL));
        Assert.Empty(list.ToOrder);
    }

    [Fact]
    public async Task List_SiteWithoutInterval_StandsByItsRunOutAndIsToBeOrdered()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var yaf = await AddAsync(firm, "YAF-1", every: null);
        await ReadAsync(firm, yaf, "YAF-1", daysAgo: 1, usable: 8, perDay: 2);

        var line = Assert.Single((await Query(firm).ListAsync(ReadingFirm.Technician, new ShelfFilter()))!.ToOrder);

        // Four weeks from the visit of yesterday and four more: 55.6 × 2 L − 8 L = 103.2 L, u = 55.6 × 0.1 L, so 103.2 + 2 × 5.6 = 114.4.
        Assert.Equal((StockStanding.BeforeNext, (DateOnly?)null, (DateOnly?)null), (line.Standing, line.NextVisit, line.SecondVisit));
        Assert.Equal(115, line.SuggestedL!.Value);
        Assert.NotNull(line.OrderBy);
    }

    [Fact]
    public async Task List_DeliveryLongerThanTheVisitAfterNext_LastsUntilAnOrderOfTheNextVisitComes()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var yaf = await AddAsync(firm, "YAF-1", every: 7, deliveryDays: 21);
        await ReadAsync(firm, yaf, "YAF-1", daysAgo: 2, usable: 40, perDay: 2);
        var quick = await AddAsync(firm, "YAF-2", every: 7);
        await ReadAsync(firm, quick, "YAF-2", daysAgo: 2, usable: 40, perDay: 2);

        var lines = (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter()))!.Rows.ToDictionary(line => line.Site);

        // Due in five days and 21 more: 27.6 × 2 L − 40 L = 15.2 L and twice 2.8 L on top. Until the visit after next 40 L last.
        Assert.Equal(21, lines["YAF-1"].SuggestedL);
        Assert.Equal(0, lines["YAF-2"].SuggestedL);
    }

    [Fact]
    public async Task List_Filters_ByProductPersonAndStanding()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var yaf = await AddAsync(firm, "YAF-1", every: 7);
        var nur = await AddAsync(firm, "NUR-1", every: 7, person: "PUM");
        await ReadAsync(firm, yaf, "YAF-1", daysAgo: 2, usable: 12, perDay: 2);
        await ReadAsync(firm, nur, "NUR-1", daysAgo: 2, usable: 500, perDay: 2);

        Assert.Equal(["NUR-1"], (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter(Person: "PUM")))!.Rows.Select(line => line.Site));
        Assert.Equal(["YAF-1"], (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter(Standing: StockStanding.BeforeNext)))!.Rows.Select(line => line.Site));
        Assert.Empty((await Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter(Product: "N-15")))!.Rows);
        Assert.Equal(["YAF-1"], (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter()))!.ToOrder.Select(line => line.Site));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task List_Customer_SeesNothing()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var yaf = await AddAsync(firm, "YAF-1", every: 7);

        Assert.Null(await Query(firm).ListAsync(ReadingFirm.CustomerOf(yaf.Customer), new ShelfFilter()));
        Assert.Null(await new MakeUpQuery(firm.Store, firm.Clock).ListAsync(ReadingFirm.CustomerOf(yaf.Customer)));
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task List_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var first = await AddAsync(firm, "AAA-0", every: 7);
        await ReadAsync(firm, first, "AAA-0", daysAgo: 2, usable: 12, perDay: 2);
        var makeUp = new MakeUpQuery(firm.Store, firm.Clock);
        var few = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter()));
        var fewMakeUp = await firm.CountAsync(() => makeUp.ListAsync(ReadingFirm.Supervisor));
        for (var i = 1; i < 10; i++)
        {
            var at = await AddAsync(firm, $"AAA-{i}", every: 7);
            await ReadAsync(firm, at, $"AAA-{i}", daysAgo: 9, usable: 30, perDay: 2);
            await ReadAsync(firm, at, $"AAA-{i}", daysAgo: 2, usable: 12, perDay: 2);
        }

        var many = await firm.CountAsync(() => Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter()));
        var manyMakeUp = await firm.CountAsync(() => makeUp.ListAsync(ReadingFirm.Supervisor));

        Assert.Equal((few, fewMakeUp), (many, manyMakeUp));
        Assert.InRange(many, 1, 12);
        Assert.Equal(10, (await Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter()))!.Total);
    }

    [Fact]
    public async Task Table_NamesThatAreFormulas_AreGuarded()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var yaf = await AddAsync(firm, "YAF-1", every: 7, name: "=1+1");
        await ReadAsync(firm, yaf, "YAF-1", daysAgo: 2, usable: 12, perDay: 2);

        var text = Encoding.UTF8.GetString(ShelfTable.Of((await Query(firm).ListAsync(ReadingFirm.Supervisor, new ShelfFilter()))!.ToOrder, Language.English));

        Assert.Contains("'=1+1", text, StringComparison.Ordinal);
        Assert.Contains(",19,2,", text, StringComparison.Ordinal);
        Assert.Equal(2, text.TrimEnd().Split("\r\n").Length);
    }

    [Fact]
    public async Task MakeUp_NewestFourReadings_WithTheFindingThatStands()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var yaf = await AddAsync(firm, "YAF-1", every: 7);
        foreach (var (daysAgo, percent) in new[] { (40, 1.0), (30, -2.0), (20, 5.0), (10, 20.0), (3, 35.0) })
        {
            await FigureAsync(firm, yaf, "YAF-1", daysAgo, FigureCodes.MakeUpShift, TestCodes.Chloride, percent, 4, "%", [new("now", 30, "mg/L", 1.5), new("usual", 22, "mg/L"), new("spread", 2, "mg/L")]);
        }

        await firm.AddFindingAsync(yaf, FindingKinds.MakeUpChanged, Severity.Plan, new DateOnly(2026, 4, 1));

        var line = Assert.Single((await new MakeUpQuery(firm.Store, firm.Clock).ListAsync(ReadingFirm.Supervisor))!.Rows);

        Assert.Equal([-2.0, 5.0, 20.0, 35.0], line.Against.Select(against => against.Value));
        Assert.Equal((30.0, 22.0, 2.0), (line.Now.Value, line.Usual, line.Spread));
        Assert.Equal(FindingKinds.MakeUpChanged, line.Finding!.Kind);
    }

    private static ShelfQuery Query(ReadingFirm firm) => new(firm.Store, new SetUpStore(firm.Store, firm.Clock), new SitesQuery(firm.Store, firm.Clock), firm.Clock);

    private static async Task<(int Customer, int Site, int System)> AddAsync(ReadingFirm firm, string code, double? every, string? person = "RYA", string name = "Yaffleford College", double deliveryDays = 5)
    {
        var at = await firm.AddSiteAsync(code, name, every, person);
        await firm.Store.WriteAsync(Viewer.System("test"), async db =>
        {
            var system = await db.Systems.FindAsync(at.System);
            system!.Document = ExchangeWriter.CanonicalOf(Documents.System(system.Document) with { Drums = [new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, HeightCm = 62, CapacityL = 60, DeliveryDays = deliveryDays }] });
        });
        if (!await firm.Store.ReadAsync(ReadingFirm.Supervisor, db => Task.FromResult(db.SetUp.Any(row => row.CodeKey == "P-40"))))
        {
            await firm.AddAsync(new SetUpRow { Kind = SetUpKind.Product, Code = "P-40", CodeKey = "P-40", Name = "Inhibitor P-40", Document = ExchangeWriter.CanonicalOf(new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor }) });
        }

        return at;
    }

    private static Task ReadAsync(ReadingFirm firm, (int Customer, int Site, int System) at, string site, double daysAgo, double usable, double perDay) => FigureAsync(
        firm, at, site, daysAgo, FigureCodes.DaysToEmpty, "D-INH", usable / perDay, 0.2, "d", [new("usable", usable, "L", 0.5), new("use-per-day", perDay, "L/d", 0.1)]);

    private static async Task FigureAsync(
        ReadingFirm firm, (int Customer, int Site, int System) at, string site, double daysAgo, string code, string about, double value, double uncertainty, string unit, IReadOnlyList<FigureInput> inputs)
    {
        var visit = ReadingFirm.VisitOf(site, Now.AddDays(-daysAgo), 1350);
        var row = await firm.AddVisitAsync(at, visit);
        await firm.AddAsync(new FigureRow
        {
            CustomerId = at.Customer, SiteId = at.Site, SystemId = at.System, VisitRowId = row, Code = code, About = about, To = visit.Arrived.Utc, Value = value, StandardUncertainty = uncertainty, Unit = unit,
            Inputs = System.Text.Json.JsonSerializer.Serialize(inputs, Json),
        });
    }
}
