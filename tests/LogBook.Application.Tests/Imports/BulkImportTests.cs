using System.Diagnostics;
using LogBook.Application.Data;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;
using Xunit.Abstractions;

namespace LogBook.Application.Tests.Imports;

public abstract class BulkImportTests<TDatabase>(ITestOutputHelper output)
    where TDatabase : TestDatabase, new()
{
    [Fact]
    public async Task Import_FortySystemsOverEighteenMonths_TakesWellUnderAMinute()
    {
        await using var database = new TDatabase();
        await database.StartAsync();
        var setUp = await Documents.SetUpAsync();
        var (site, system) = (setUp.Sites[0], setUp.Systems[0]);
        var document = setUp with
        {
            Sites = [.. setUp.Sites, .. Enumerable.Range(1, 40).Select(i => site with { Code = $"S-{i}" })],
            Systems = [.. setUp.Systems, .. Enumerable.Range(1, 40).Select(i => system with { Site = $"S-{i}" })],
            Visits = [.. Enumerable.Range(0, 1500).Select(i => Large(i))],
        };
        var clock = Stopwatch.StartNew();
        var before = Environment.CpuUsage.TotalTime;

        var outcome = await Documents.ImportAsync(database, document);

        clock.Stop();
        var busy = Environment.CpuUsage.TotalTime - before;
        output.WriteLine($"{outcome.Visits} visits, {await database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Readings.CountAsync())} readings in {clock.Elapsed.TotalSeconds:0.0} s, {busy.TotalSeconds:0.0} s of them of one processor");
        Assert.Empty(outcome.Issues);
        Assert.Equal(1500, outcome.Visits);
        
        // The processor's time: how long one waits depends on what else the machine does.
        Assert.InRange(busy, TimeSpan.Zero, TimeSpan.FromMinutes(1));
    }

    // 40 readings each, 60,000 in all, the visits of a site two weeks apart.
    private static Visit Large(int i)
    {
        var at = Moment.OfUtc(new DateTime(2023, 9, 1, 9, 0, 0, DateTimeKind.Utc).AddDays(14 * (i / 40)).AddMinutes(i % 40));
        var visit = SampleFirm.Visit($"S-{1 + (i % 40)}", at.Text);
        return visit with { Systems = [visit.Systems[0] with { Readings = [.. Enumerable.Repeat(visit.Systems[0].Readings, 8).SelectMany(r => r)] }] };
    }
}

[CollectionDefinition("alone", DisableParallelization = true)]
public sealed class Alone;

[Collection("alone")]
public sealed class BulkImportOnSqliteTests(ITestOutputHelper output) : BulkImportTests<SqliteDatabase>(output);

[Collection("alone")]
public sealed class BulkImportOnPostgreSqlTests(ITestOutputHelper output) : BulkImportTests<PostgresDatabase>(output);
