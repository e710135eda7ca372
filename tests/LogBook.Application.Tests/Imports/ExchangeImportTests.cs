using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Tests.Data;
using LogBook.Domain.Exchange;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Imports;

public abstract class ExchangeImportTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>
    where TDatabase : TestDatabase, new()
{
    private readonly TDatabase _database = fixture.Database;

    [Fact]
    public async Task Import_ThenExport_IsTheCanonicalDocument()
    {
        await using var database = new TDatabase();
        await database.StartAsync();
        var first = SampleFirm.Visit();
        var document = await Documents.SetUpAsync() with { Visits = [SampleFirm.Amended(first, 59), first, SampleFirm.Visit("PLU-1", "2025-03-05T09:00:00+00:00")] };

        var outcome = await Documents.ImportAsync(database, document);

        Assert.Empty(outcome.Issues);
        Assert.Equal(3, outcome.Visits);
        Assert.Equal(ExchangeWriter.Write(document), ExchangeWriter.Write((await database.Get<ExchangeExport>().ExportAsync(database.Supervisor))!));
        Assert.Equal(0, await database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Outbox.CountAsync()));
        Assert.Empty((await database.Get<Verifier>().VerifyAsync(database.Supervisor)).Faults);
    }

    [Fact]
    public async Task Import_OneVisitAmongGoodOnesRefused_WritesNothing()
    {
        var good = SampleFirm.Visit(arrived: "2025-03-11T09:00:00+00:00");
        var bad = SampleFirm.Amended(SampleFirm.Visit(arrived: "2025-03-12T09:00:00+00:00"), 59);
        var before = await CountAsync();

        var refused = await Documents.ImportAsync(_database, Document(good, bad));

        Assert.False(refused.Written);
        Assert.Equal("visits[1].version", Assert.Single(refused.Issues).Path);
        Assert.Equal(before, await CountAsync());
    }

    [Fact]
    public async Task Import_Partial_WritesTheGoodOnesAndListsTheOther()
    {
        var good = SampleFirm.Visit(arrived: "2025-03-13T09:00:00+00:00");
        var bad = SampleFirm.Visit("NOWHERE", "2025-03-13T12:00:00+00:00");
        var before = await CountAsync();

        var outcome = await Documents.ImportAsync(_database, Document(bad, good), partial: true);

        Assert.True(outcome.Written);
        Assert.Contains(outcome.Issues, issue => issue.Path.StartsWith("visits[0]", StringComparison.Ordinal));
        Assert.Equal(before + 1, await CountAsync());
    }

    [Fact]
    public async Task Import_Again_KnowsAllAndChangesNothing()
    {
        var document = Document(SampleFirm.Visit(arrived: "2025-03-14T09:00:00+00:00"));
        await Documents.ImportAsync(_database, document);

        var again = await Documents.ImportAsync(_database, document);

        Assert.False(again.Written);
        Assert.Equal(1, again.AlreadyKnown);
    }

    [Fact]
    public async Task Import_OtherSetUpUnderTheSameCode_NeedsUpdate()
    {
        var setUp = await Documents.SetUpAsync();
        var changed = setUp with { Sites = [.. setUp.Sites.Select(site => site.Code == "PLU-1" ? site with { VisitEveryDays = 14 } : site)] };

        Assert.False((await Documents.ImportAsync(_database, changed)).Written);
        var updated = await Documents.ImportAsync(_database, changed, update: true);

        Assert.Equal(1, updated.SetUpRecords);
        Assert.Equal(14, await _database.Get<LogBookStore>().ReadAsync(_database.Supervisor, db => db.Sites.Where(s => s.CodeKey == "PLU-1").Select(s => s.VisitEveryDays).SingleAsync()));
    }

    private static ExchangeDocument Document(params Visit[] visits) => new() { Format = "logbook-exchange", Version = 1, Visits = visits };

    private Task<int> CountAsync() => _database.Get<LogBookStore>().ReadAsync(_database.Supervisor, db => db.Visits.CountAsync());
}

public sealed class ExchangeImportOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : ExchangeImportTests<SqliteDatabase>(fixture);

public sealed class ExchangeImportOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : ExchangeImportTests<PostgresDatabase>(fixture);
