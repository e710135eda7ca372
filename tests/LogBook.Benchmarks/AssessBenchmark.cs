using LogBook.Application.Demo;
using LogBook.Application.Imports;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Testing.Databases;
using Microsoft.Data.Sqlite;

namespace LogBook.Benchmarks;

/// <summary>Import of a firm against the same rows raw; assessment of five years of one system against reading its rows raw.</summary>
internal static class AssessBenchmark
{
    private const int Warm = 3;
    private const int Runs = 12;

    public static async Task RunAsync(Table table)
    {
        var document = DemoScale.Create(1, 5);
        await using var ours = new SqliteDatabase();
        await using var raw = new SqliteDatabase();
        await ours.StartAsync();
        await raw.StartAsync();
        ours.Clock.SetUtcNow(new DateTimeOffset(2030, 7, 1, 0, 0, 0, TimeSpan.Zero));
        using var copy = new RowCopy(ours.File, raw.File);
        var json = System.Text.Encoding.UTF8.GetBytes(ExchangeWriter.Write(document));
        var import = await SaveBenchmark.TimeAsync(async () =>
        {
            using var stream = new MemoryStream(json);
            await ours.Get<ExchangeImport>().ImportAsync(Application.Data.Viewer.System("benchmark"), stream);
        });
        using (var stream = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(ExchangeWriter.Write(document with { Visits = [] }))))
        {
            await raw.Get<ExchangeImport>().ImportAsync(Application.Data.Viewer.System("benchmark"), stream);
        }

        // The audit trails have parted by then; the rows of the visits are what is compared.
        var inserts = copy.NewRows().Where(insert => !insert.CommandText.Contains("AuditTrail", StringComparison.Ordinal)).ToList();
        var plain = await SaveBenchmark.TimeAsync(() =>
        {
            copy.Write(inserts);
            return Task.CompletedTask;
        });
        table.Row($"Import of {document.Visits.Count} visits, checks and assessment included, once, cold", FormattableString.Invariant($"{import:0} ms"));
        table.Row("   raw, same rows, one transaction", FormattableString.Invariant($"{plain:0} ms, {inserts.Count} rows"));

        var firm = await ours.Get<SetUpStore>().FirmAsync(ours.Supervisor);
        var system = document.Systems[0];
        var history = SystemHistory.From(firm, system.Site, system.Code, document.Visits);
        var pairs = new List<(double, double)>();
        var allocated = 0L;
        for (var i = 0; i < Warm + Runs; i++)
        {
            var before = GC.GetAllocatedBytesForCurrentThread();
            var assess = await SaveBenchmark.TimeAsync(() =>
            {
                Assessment.Of(history, ours.Clock.GetUtcNow().UtcDateTime);
                return Task.CompletedTask;
            });
            allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            var read = await SaveBenchmark.TimeAsync(() =>
            {
                ReadRaw(ours.File);
                return Task.CompletedTask;
            });
            if (i >= Warm)
            {
                pairs.Add((assess, read));
            }
        }

        table.Row($"Assessment of {document.Visits.Count} visits in five years ÷ reading their documents and readings raw", $"{Ratio.Of(pairs)}");
        table.Row("   assessment", SaveBenchmark.Milliseconds([.. pairs.Select(p => p.Item1)]), "under 1000 ms", Ratio.MedianOf([.. pairs.Select(p => p.Item1)]) < 1000);
        table.Row("   raw reading", SaveBenchmark.Milliseconds([.. pairs.Select(p => p.Item2)]));
        table.Row("   allocated per visit", FormattableString.Invariant($"{allocated / document.Visits.Count / 1024.0:0} KiB"));
    }

    private static void ReadRaw(string file)
    {
        using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Mode = SqliteOpenMode.ReadOnly }.ToString());
        connection.Open();
        foreach (var question in (string[])["SELECT * FROM VisitVersions", "SELECT * FROM Readings"])
        {
            using var command = connection.CreateCommand();
            command.CommandText = question;
            using var reader = command.ExecuteReader();
            var values = new object[reader.FieldCount];
            while (reader.Read())
            {
                reader.GetValues(values);
            }
        }
    }
}
