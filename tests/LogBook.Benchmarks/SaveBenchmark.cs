using System.Diagnostics;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;

namespace LogBook.Benchmarks;

/// <summary>P1: one visit taken in, against the very same rows by plain statements; checks and assessment are reported apart, as the intake itself did them.</summary>
internal static class SaveBenchmark
{
    private const int Warm = 10;
    private const int Pairs = 60;

    public static async Task RunAsync(Table table)
    {
        await using var ours = new SqliteDatabase();
        await using var raw = new SqliteDatabase();
        await ours.StartWithSampleFirmAsync();
        await raw.StartWithSampleFirmAsync();
        using var copy = new RowCopy(ours.File, raw.File);
        var intake = ours.Get<VisitIntake>();
        var parts = new Dictionary<string, double>();
        using var listener = new ActivityListener
        {
            ShouldListenTo = source => source.Name == VisitIntake.Source,
            Sample = (ref ActivityCreationOptions<ActivityContext> _) => ActivitySamplingResult.AllData,
            ActivityStopped = part => parts[part.OperationName] = part.Duration.TotalMilliseconds,
        };
        ActivitySource.AddActivityListener(listener);
        var saves = new List<(double, double)>();
        var (checks, judged, all, rows) = (new List<double>(), new List<double>(), new List<double>(), 0);
        for (var i = 0; i < Warm + Pairs; i++)
        {
            // Systems change places, so that no history grows long: the assessment is measured by itself.
            var visit = SampleFirm.Visit(i % 2 == 0 ? "YAF-1" : "PLU-1", Moment.OfUtc(new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(i)).Text);
            var json = VisitDocument.Canonical(visit);
            var whole = await TimeAsync(async () => Require(await intake.ReceiveAsync(ours.Technician, json, IntakeSource.Tablet) is IntakeOutcome.Stored));
            var (check, assess) = (parts["check"], parts["assess"]);
            var inserts = copy.NewRows();
            rows = inserts.Count;
            var plain = await TimeAsync(() =>
            {
                copy.Write(inserts);
                return Task.CompletedTask;
            });
            if (i >= Warm)
            {
                saves.Add((whole - check - assess, plain));
                checks.Add(check);
                judged.Add(assess);
                all.Add(whole);
            }
        }

        var ratio = Ratio.Of(saves);
        table.Row("P1 save of one visit ÷ raw", $"{ratio}", "at most 4.0", ratio.High <= 4.0);
        table.Row("   raw, same rows, one transaction", $"{Milliseconds([.. saves.Select(s => s.Item2)])}, {rows} rows");
        table.Row("   whole intake", Milliseconds(all));
        table.Row("   of it: reading and checking", Milliseconds(checks));
        table.Row("   of it: assessment, its result stored", Milliseconds(judged));
    }

    internal static async Task<double> TimeAsync(Func<Task> act)
    {
        var since = Stopwatch.GetTimestamp();
        await act();
        return Stopwatch.GetElapsedTime(since).TotalMilliseconds;
    }

    internal static string Milliseconds(IReadOnlyCollection<double> times) => FormattableString.Invariant($"{Ratio.MedianOf([.. times]):0.0} ms");

    private static void Require(bool holds)
    {
        if (!holds)
        {
            throw new InvalidOperationException("A visit of the benchmark was not taken in.");
        }
    }
}
