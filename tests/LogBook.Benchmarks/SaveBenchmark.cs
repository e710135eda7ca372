using System.Diagnostics;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Benchmarks;

/// <summary>P1: one visit taken in, against the very same rows by plain statements; checks and assessment are reported apart.</summary>
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
        var assessments = ours.Get<AssessmentKeeper>();
        var firm = await ours.Get<Application.Sites.SetUpStore>().FirmAsync(ours.Technician);
        var systems = await ours.Get<LogBookStore>().ReadAsync(
            ours.Technician, db => db.Systems.Join(db.Sites, system => system.SiteId, site => site.Id, (system, site) => new { site.Code, system.Id }).ToDictionaryAsync(pair => pair.Code, pair => pair.Id));
        var saves = new List<(double, double)>();
        var (checks, judged, all, rows) = (new List<double>(), new List<double>(), new List<double>(), 0);
        for (var i = 0; i < Warm + Pairs; i++)
        {
            // Systems change places, so that no history grows long: the assessment is measured by itself.
            var visit = SampleFirm.Visit(i % 2 == 0 ? "YAF-1" : "PLU-1", Moment.OfUtc(new DateTime(2025, 1, 1, 0, 0, 0, DateTimeKind.Utc).AddHours(i)).Text);
            var json = VisitDocument.Canonical(visit);
            var whole = await TimeAsync(async () => Require(await intake.ReceiveAsync(ours.Technician, json, IntakeSource.Tablet) is IntakeOutcome.Stored));
            var check = await TimeAsync(() =>
            {
                var read = ExchangeReader.ReadAndCheck($$"""{"format":"logbook-exchange","version":1,"visits":[{{json}}]}""", firm, ours.Technician.Language);
                _ = VisitChecks.Check(read.Document!.Visits[0], new VisitContext(firm, [], ours.Technician.Language));
                return Task.CompletedTask;
            });
            var assess = await TimeAsync(() => assessments.AssessAsync(ours.Technician, systems[visit.Site]));
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
        table.Row("   of it: assessment (measured once more by itself)", Milliseconds(judged));
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
