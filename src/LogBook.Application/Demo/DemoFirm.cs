using LogBook.Domain.Exchange;

namespace LogBook.Application.Demo;

/// <summary>The invented firm with 18 months of visits, month 0 being July 2025; its stories stand in db/demo.</summary>
public static class DemoFirm
{
    /// <summary>Seed of the firm that is shown when nobody asks for another.</summary>
    public const ulong DefaultSeed = 20250701;

    /// <summary>Last day of visits.</summary>
    public static readonly DateOnly LastDay = new(2026, 12, 31);

    /// <summary>Generates the firm: the same seed gives the same document, byte for byte.</summary>
    /// <param name="seed">Seed; 0 means <see cref="DefaultSeed"/>.</param>
    /// <returns>Document, answers and truth.</returns>
    public static DemoFirmResult Create(ulong seed = default)
    {
        var firm = DemoFiles.Firm();
        var files = DemoFiles.Sites();
        return Run(firm, files, seed == 0 ? DefaultSeed : seed, LastDay);
    }

    internal static DemoFirmResult Run(DemoFirmFile firm, IReadOnlyList<DemoSiteFile> files, ulong seed, DateOnly lastDay)
    {
        var meters = new DemoMeters(firm, seed, lastDay);
        var runs = files.Select(f => new DemoSiteRun(f, firm, meters, seed)).ToArray();

        // Sites do not share a generator, so they may run side by side without touching the result.
        Parallel.ForEach(runs, run => run.Run(lastDay));
        var document = new ExchangeDocument
        {
            Format = "logbook-exchange",
            Version = 1,
            Customers = [.. files.Select(f => f.Customer).DistinctBy(c => c.Code)],
            People = firm.People,
            Products = firm.Products,
            Instruments = meters.WithChecks(lastDay),
            Lots = firm.Lots,
            Rules = firm.Rules,
            Sites = [.. runs.Select(r => r.Site)],
            Systems = [.. runs.Select(r => r.System), .. files.SelectMany(f => f.RecordOnly.Select(o => o.System))],
            Visits = [.. runs.SelectMany(r => r.Visits).OrderBy(v => v.Arrived.Utc).ThenBy(v => v.Site, StringComparer.Ordinal)],
        };
        return new DemoFirmResult(
            document,
            new DemoAnswers([.. files.SelectMany(f => f.Answers.Select(a => a.For(f.Code))), .. firm.Answers.Select(a => a.For(null))]),
            [.. runs.SelectMany(r => r.Truths).OrderBy(t => t.Utc).ThenBy(t => t.Site, StringComparer.Ordinal)]);
    }
}
