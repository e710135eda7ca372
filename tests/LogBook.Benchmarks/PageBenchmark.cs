using LogBook.Application.Clocks;
using LogBook.Application.Data;
using LogBook.Application.Demo;
using LogBook.Application.DueLists;
using LogBook.Application.History;
using LogBook.Application.Imports;
using LogBook.Application.Planning;
using LogBook.Application.Reviews;
using LogBook.Application.Shelf;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Testing.Databases;

namespace LogBook.Benchmarks;

/// <summary>P2: statements that a page sends, at two sizes; time at the larger one.</summary>
internal static class PageBenchmark
{
    private const int Runs = 15;
    private const int Many = 200;

    // Enough for a few visits of each site; the sites are what counts here.
    private const double ManyYears = 0.12;

    private static readonly (string Name, int? Most)[] Pages = [("sites", 8), ("needs attention", 8), ("today's round", 8), ("round of a tablet", 12), ("plan", 8), ("clocks", 8), ("shelf", 8), ("pack list", 4), ("site", 6), ("site history", 6), ("compare", 4), ("visit", 6), ("visits", null)];

    public static async Task RunAsync(Table table)
    {
        var small = await CountsAsync(2, 0.5);
        var large = await CountsAsync(8, 0.5);
        var whole = await CountsAsync(Many, ManyYears);
        foreach (var (page, most) in Pages)
        {
            var (few, many) = (small[page].Statements, large[page].Statements);
            var all = whole[page].Statements;
            table.Row(
                $"P2 statements, {page}, 2, 8 and {Many} sites",
                $"{few}, {many}, {all}; {large[page].Time} at 8, {whole[page].Time} at {Many}",
                most is null ? "the same" : $"the same, at most {most}",
                few == many && many == all && (most is null || all <= most));
        }
    }

    private static async Task<Dictionary<string, (int Statements, string Time)>> CountsAsync(int systems, double years)
    {
        var document = DemoScale.Create(systems, years);
        await using var database = new SqliteDatabase();
        await database.StartAsync();
        database.Clock.SetUtcNow(new DateTimeOffset(2026, 1, 1, 8, 0, 0, TimeSpan.Zero));
        using (var stream = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(ExchangeWriter.Write(document))))
        {
            await database.Get<ExchangeImport>().ImportAsync(Viewer.System("benchmark"), stream);
        }

        var (viewer, site, visit) = (database.Supervisor, document.Systems[0], document.Visits[^1]);
        var found = new Dictionary<string, (int, string)>();
        async Task MeasureAsync(string page, Func<Task> read)
        {
            await read();
            database.Statements.Reset();
            await read();
            var statements = database.Statements.Count;
            var times = new List<double>();
            for (var i = 0; i < Runs; i++)
            {
                times.Add(await SaveBenchmark.TimeAsync(read));
            }

            found[page] = (statements, SaveBenchmark.Milliseconds(times));
        }

        await MeasureAsync("sites", () => database.Get<SitesQuery>().ListAsync(viewer));
        await MeasureAsync("needs attention", () => database.Get<AttentionQuery>().ListAsync(viewer, new AttentionFilter()));
        await MeasureAsync("today's round", () => database.Get<TodaysRoundQuery>().OfAsync(viewer));
        await MeasureAsync("round of a tablet", async () =>
        {
            var technician = database.Technician;
            await database.Get<TodaysRoundQuery>().OfAsync(technician);
            await database.Get<PhraseStore>().InUseAsync(technician);
            await database.Get<SettingStore>().InUseAsync(technician);
            await database.Get<StandingActionsQuery>().OfAsync(technician);
        });
        await MeasureAsync("plan", () => database.Get<PlanQuery>().OfAsync(viewer, null, 7));
        await MeasureAsync("clocks", () => database.Get<ClocksQuery>().ListAsync(viewer, new ClocksFilter()));
        await MeasureAsync("shelf", () => database.Get<ShelfQuery>().ListAsync(viewer, new ShelfFilter()));
        await MeasureAsync("pack list", () => database.Get<PackQuery>().OfAsync(viewer, DateOnly.FromDateTime(database.Clock.GetUtcNow().UtcDateTime), "RYA"));
        await MeasureAsync("site", () => database.Get<SiteCardQuery>().OfAsync(viewer, site.Site));
        await MeasureAsync("site history", () => database.Get<SiteHistoryQuery>().OfAsync(viewer, site.Site, site.Code, new DateOnly(2025, 7, 1), new DateOnly(2026, 1, 1), null));
        await MeasureAsync("compare", () => database.Get<CompareQuery>().OfAsync(viewer, [.. document.Systems.Take(2).Select(system => $"{system.Site}/{system.Code}")], null, new DateOnly(2025, 7, 1), new DateOnly(2026, 1, 1)));
        await MeasureAsync("visit", () => database.Get<VisitQuery>().OfAsync(viewer, visit.Id));
        await MeasureAsync("visits", () => database.Get<VisitsQuery>().ListAsync(viewer, new VisitsFilter()));
        return found;
    }
}
