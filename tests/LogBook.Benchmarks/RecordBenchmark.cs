using System.Globalization;
using LogBook.Application.Data;
using LogBook.Application.Demo;
using LogBook.Application.Imports;
using LogBook.Application.RecordPacks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Testing.Databases;

namespace LogBook.Benchmarks;

/// <summary>The record pack of twelve months of the busiest site of the invented firm: more than a hundred visits.</summary>
internal static class RecordBenchmark
{
    private const int Runs = 5;
    private const double MostSeconds = 10;

    public static async Task RunAsync(Table table)
    {
        var document = DemoFirm.Create().Document;
        await using var database = new SqliteDatabase();
        await database.StartAsync();
        database.Clock.SetUtcNow(new DateTimeOffset(2027, 1, 2, 8, 0, 0, TimeSpan.Zero));
        using (var stream = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(ExchangeWriter.Write(document with { Visits = [.. document.Visits.Where(visit => visit.Site == "WEN-1" && visit.Arrived.Utc.Year == 2026)] }))))
        {
            await database.Get<ExchangeImport>().ImportAsync(Viewer.System("benchmark"), stream);
        }

        RecordPackFile? file = null;
        var times = new List<double>();
        for (var run = 0; run < Runs; run++)
        {
            times.Add(await SaveBenchmark.TimeAsync(async () =>
                file = RecordPackMaker.Make((await database.Get<RecordPackReader>().ReadAsync(database.Supervisor, "WEN-1", new DateOnly(2026, 1, 1), new DateOnly(2026, 12, 31)))!, Language.English)));
        }

        // The first run warms up; the goal is about one of the others.
        var longest = times.Skip(1).Max();
        table.Row(
            string.Create(CultureInfo.InvariantCulture, $"record pack, {file!.Visits} visits, {file.Results} results, {file.Zip.Length / 1024} kB"),
            SaveBenchmark.Milliseconds(times),
            string.Create(CultureInfo.InvariantCulture, $"at most {MostSeconds:0} s"),
            longest <= MostSeconds * 1000);
    }
}
