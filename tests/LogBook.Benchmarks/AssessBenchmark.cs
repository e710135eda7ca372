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
    // The runtime compiles what is called often a second and third time over the first dozen runs; reading raw is compiled from the start.
    // A server has that behind it: the first runs are told by themselves.
    private const int Warm = 16;
    private const int Runs = 24;
    private const int FirstRuns = 3;

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
        var asOf = ours.Clock.GetUtcNow().UtcDateTime;
        var (cold, warm, coldBytes, warmBytes) = (new List<(double, double)>(), new List<(double, double)>(), 0L, 0L);
        var (processor, first) = (new List<(double, double)>(), new List<(double, double)>());
        for (var i = 0; i < Warm + Runs; i++)
        {
            // A history keeps what it worked out of its set-up: each run begins with one of its own.
            var (all, busy, bytes) = Measure(() => Assessment.Of(SystemHistory.From(firm, system.Site, system.Code, document.Visits), asOf));
            var before = SystemHistory.From(firm, system.Site, system.Code, document.Visits.SkipLast(1));
            var history = SystemHistory.From(firm, system.Site, system.Code, document.Visits);
            var memo = new AssessmentMemo();
            memo.Of(before, asOf, AssessmentInputs.None);
            var (more, _, moreBytes) = Measure(() => memo.Of(history, asOf, AssessmentInputs.None));
            var (read, busyReading, _) = Measure(() => ReadRaw(ours.File));
            if (i >= Warm)
            {
                cold.Add((all, read));
                warm.Add((more, read));
                processor.Add((busy, busyReading));
                (coldBytes, warmBytes) = (bytes, moreBytes);
            }
            else if (i < FirstRuns)
            {
                first.Add((all, read));
            }
        }

        var (whole, one) = (Ratio.Of(cold), Ratio.Of(warm));
        table.Row($"Assessment of {document.Visits.Count} visits in five years ÷ reading their documents and readings raw", $"{whole}", "at most 3", whole.High <= 3);
        table.Row("   by processor time of the process", $"{Ratio.Of(processor)}");
        table.Row($"   by the least of {Runs} runs each", FormattableString.Invariant($"{cold.Min(p => p.Item1) / cold.Min(p => p.Item2):0.00}"));
        table.Row($"   the first {FirstRuns} runs of the process, while it is being compiled", $"{Ratio.Of(first)}");
        table.Row("   assessment", SaveBenchmark.Milliseconds([.. cold.Select(p => p.Item1)]), "under 1000 ms", Ratio.MedianOf([.. cold.Select(p => p.Item1)]) < 1000);
        table.Row("   raw reading", SaveBenchmark.Milliseconds([.. cold.Select(p => p.Item2)]));
        table.Row("   allocated per visit", FormattableString.Invariant($"{coldBytes / document.Visits.Count / 1024.0:0} KiB"));
        table.Row("   collector", System.Runtime.GCSettings.IsServerGC ? "server, as the web server" : "workstation, as the command");
        table.Row("The same when all but the last visit are remembered ÷ the same raw reading", $"{one}", "at most 3", one.High <= 3);
        table.Row("   assessment", SaveBenchmark.Milliseconds([.. warm.Select(p => p.Item1)]));
        table.Row("   allocated for the visit", FormattableString.Invariant($"{warmBytes / 1024.0:0} KiB"));
        table.Row("   kept in memory per visit", FormattableString.Invariant($"{Kept(SystemHistory.From(firm, system.Site, system.Code, document.Visits), asOf) / document.Visits.Count / 1024.0:0} KiB"));
    }

    private static (double Milliseconds, double Processor, long Bytes) Measure(Action act)
    {
        var before = GC.GetAllocatedBytesForCurrentThread();
        var busy = Environment.CpuUsage.TotalTime;
        var since = System.Diagnostics.Stopwatch.GetTimestamp();
        act();
        var passed = System.Diagnostics.Stopwatch.GetElapsedTime(since);
        return (passed.TotalMilliseconds, (Environment.CpuUsage.TotalTime - busy).TotalMilliseconds, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static long Kept(SystemHistory history, DateTime asOf)
    {
        var memo = new AssessmentMemo();
        var before = GC.GetTotalMemory(forceFullCollection: true);
        memo.Of(history, asOf, AssessmentInputs.None);
        var kept = GC.GetTotalMemory(forceFullCollection: true) - before;
        GC.KeepAlive(memo);
        return kept;
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
