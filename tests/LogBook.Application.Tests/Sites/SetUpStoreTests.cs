using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Testing.Databases;

namespace LogBook.Application.Tests.Sites;

public abstract class SetUpStoreTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>
    where TDatabase : TestDatabase, new()
{
    private readonly TDatabase _database = fixture.Database;

    private SetUpStore Store => _database.Get<SetUpStore>();

    [Fact]
    public async Task Save_ByTwoWhoReadTheSame_TellsTheSecondWhatStands()
    {
        var site = (await Store.FirmAsync(_database.Supervisor)).Sites["YAF-1"];
        var read = (await Store.FindAsync(_database.Supervisor, SetUpKind.Site, "yaf-1"))!.Version;

        var first = Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(_database.Supervisor, site with { AccessNotes = "Ask at the gate." }, read));
        var second = Assert.IsType<SaveOutcome.ChangedMeanwhile>(await Store.SaveAsync(_database.Supervisor, site with { AccessNotes = "Ring twice." }, read));

        Assert.Equal(read + 1, first.Version);
        Assert.Equal(first.Version, second.Version);
        Assert.Contains("Ask at the gate.", second.Current, StringComparison.Ordinal);
        Assert.Equal("Ask at the gate.", (await Store.FirmAsync(_database.Supervisor)).Sites["YAF-1"].AccessNotes);
    }

    [Fact]
    public async Task Save_ByATechnician_IsNotAllowed()
    {
        var site = (await Store.FirmAsync(_database.Technician)).Sites["YAF-1"];

        Assert.IsType<SaveOutcome.NotAllowed>(await Store.SaveAsync(_database.Technician, site with { Name = "Mine" }, 1));
    }

    [Fact]
    public async Task Save_SiteOfAnUnknownCustomer_SaysWhichField()
    {
        var site = (await Store.FirmAsync(_database.Supervisor)).Sites["PLU-1"];

        var invalid = Assert.IsType<SaveOutcome.Invalid>(await Store.SaveAsync(_database.Supervisor, site with { Code = "PLU-2", Customer = "NOBODY" }, 0));

        Assert.Equal("customer", Assert.Single(invalid.Issues).Path);
    }

    [Fact]
    public async Task Retire_ThenRestore_TakesOutOfUseAndBack()
    {
        Assert.IsType<SaveOutcome.Saved>(await Store.RetireAsync(_database.Supervisor, SetUpKind.Lot, "IN-0412", "used up"));
        Assert.Empty((await Store.FirmAsync(_database.Supervisor)).Lots);
        Assert.Single((await Store.FirmAsync(_database.Supervisor, withRetired: true)).Lots);

        Assert.IsType<SaveOutcome.Saved>(await Store.RestoreAsync(_database.Supervisor, SetUpKind.Lot, "IN-0412", "found another bottle"));
        Assert.Single((await Store.FirmAsync(_database.Supervisor)).Lots);
    }
}

public sealed class SetUpStoreOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : SetUpStoreTests<SqliteDatabase>(fixture);

public sealed class SetUpStoreOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : SetUpStoreTests<PostgresDatabase>(fixture);
