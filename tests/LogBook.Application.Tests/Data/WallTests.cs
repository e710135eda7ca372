using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Visits;
using LogBook.Domain.Sites;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Data;

public abstract class WallTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>
    where TDatabase : TestDatabase, new()
{
    private readonly TDatabase _database = fixture.Database;

    [Fact]
    public async Task Read_ForeignVisit_LooksLikeAbsence()
    {
        var visit = SampleFirm.Visit("PLU-1");
        Assert.IsType<IntakeOutcome.Stored>(await _database.Get<VisitIntake>().ReceiveAsync(_database.Technician, visit, IntakeSource.Tablet));
        var foreigner = await _database.OfCustomerAsync("YAF");
        var owner = await _database.OfCustomerAsync("PLU");

        Assert.Null(await _database.Get<VisitReader>().FindAsync(foreigner, visit.Id));
        Assert.NotNull(await _database.Get<VisitReader>().FindAsync(owner, visit.Id));
        Assert.Null(await _database.Get<AssessmentKeeper>().HistoryAsync(foreigner, "PLU-1", "CT-1"));
        Assert.Null(await _database.Get<ExchangeExport>().ExportAsync(foreigner, "PLU-1"));
        Assert.DoesNotContain(await _database.Get<FindingsQuery>().ListAsync(foreigner), f => f.Site == "PLU-1");
        Assert.Equal(["YAF-1"], (await _database.Get<SetUpStore>().FirmAsync(foreigner)).Sites.Keys);
    }

    [Fact]
    public async Task Receive_AtForeignSite_WritesNothing()
    {
        var limited = await _database.OfCustomerAsync("YAF", PersonRole.Technician);
        var visit = SampleFirm.Visit("PLU-1");

        Assert.IsType<IntakeOutcome.Refused>(await _database.Get<VisitIntake>().ReceiveAsync(limited, visit, IntakeSource.Api));

        Assert.Null(await _database.Get<VisitReader>().FindAsync(_database.Supervisor, visit.Id));
    }

    [Fact]
    public async Task Receive_UnderAForeignVisitsIdentity_LooksLikeAbsence()
    {
        var foreign = SampleFirm.Visit("PLU-1");
        await _database.Get<VisitIntake>().ReceiveAsync(_database.Technician, foreign, IntakeSource.Tablet);
        var limited = await _database.OfCustomerAsync("YAF", PersonRole.Technician);

        Assert.IsType<IntakeOutcome.NotFound>(await _database.Get<VisitIntake>().ReceiveAsync(limited, SampleFirm.Visit() with { Id = foreign.Id }, IntakeSource.Api));
    }

    [Fact]
    public async Task Write_DetachedForeignRowOrChildOfForeignCustomer_IsRefused()
    {
        var store = _database.Get<LogBookStore>();
        var viewer = await _database.OfCustomerAsync("YAF", PersonRole.Supervisor);
        var site = await store.ReadAsync(_database.Supervisor, db => db.Sites.SingleAsync(s => s.CodeKey == "PLU-1"));

        await Assert.ThrowsAsync<CustomerWallException>(() => store.WriteAsync(viewer, db =>
        {
            site.Name = "taken over";
            db.Update(site);
            return Task.CompletedTask;
        }));
        await Assert.ThrowsAsync<CustomerWallException>(() => store.WriteAsync(viewer, db =>
        {
            db.Add(new SystemRow { CustomerId = site.CustomerId, SiteId = site.Id, Code = "X", CodeKey = "X" });
            return Task.CompletedTask;
        }));

        Assert.Equal("Pludworth Mouldings", await store.ReadAsync(_database.Supervisor, db => db.Sites.Where(s => s.Id == site.Id).Select(s => s.Name).SingleAsync()));
    }

    [Fact]
    public async Task Context_OfNobody_SeesNothingAlsoAfterSomebody()
    {
        Assert.NotEqual(0, await _database.Get<LogBookStore>().ReadAsync(_database.Supervisor, db => db.Sites.CountAsync()));
        for (var i = 0; i < 3; i++)
        {
            await using var db = await _database.Get<IDbContextFactory<LogBookDb>>().CreateDbContextAsync();
            Assert.Equal(0, await db.Sites.CountAsync());
        }
    }

    [Fact]
    public void Model_EveryTableWithACustomer_HasAFilter()
    {
        using var db = _database.Get<IDbContextFactory<LogBookDb>>().CreateDbContext();

        // Accounts are looked up before anybody is known.
        var unguarded = db.Model.GetEntityTypes()
            .Where(type => type.ClrType != typeof(LogBookUser) && type.FindProperty("CustomerId") is not null && type.GetDeclaredQueryFilters().Count == 0)
            .Select(type => type.ClrType.Name);

        Assert.Empty(unguarded);
        Assert.All(
            db.Model.GetEntityTypes().Select(type => type.ClrType).Where(type => type.Namespace == typeof(VisitRow).Namespace && type.GetProperty("SiteId") is not null),
            type => Assert.True(typeof(ICustomerOwned).IsAssignableFrom(type) || typeof(ICustomerMayOwn).IsAssignableFrom(type), type.Name));
    }
}

public sealed class WallOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : WallTests<SqliteDatabase>(fixture);

public sealed class WallOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : WallTests<PostgresDatabase>(fixture);
