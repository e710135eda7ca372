using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Domain.Languages;
using LogBook.Domain.Phrases;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Sites;

public abstract class PhraseStoreTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>
    where TDatabase : TestDatabase, new()
{
    private readonly TDatabase _database = fixture.Database;

    private PhraseStore Store => _database.Get<PhraseStore>();

    private static QuickPhrases Of(params Text[] seen) => new(new Dictionary<PhraseUse, IReadOnlyList<Text>> { [PhraseUse.Seen] = seen });

    [Fact]
    public async Task Save_IsInUseForTheFirm_OnRecord_AndNotOverwritten()
    {
        var before = (await Store.FindAsync(_database.Supervisor))!;
        var first = Of(new Text("moss", "musgo", "musgo"));

        var saved = Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(_database.Supervisor, first, before.Version));

        Assert.Equal(first.Write(), (await Store.InUseAsync(_database.Technician)).Write());
        Assert.Empty((await Store.InUseAsync(await _database.OfCustomerAsync("YAF"))).ByUse);
        var changed = Of(new Text("moss", "musgo", "musgo"), new Text("drift", "arrastre", "arraste"));
        var again = Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(_database.Supervisor, changed, saved.Version));
        Assert.Equal(saved.Version + 1, again.Version);

        // Whoever had opened the page before that saves upon an older version.
        var meanwhile = Assert.IsType<SaveOutcome.ChangedMeanwhile>(await Store.SaveAsync(_database.Supervisor, QuickPhrases.None, saved.Version));
        Assert.Equal((changed.Write(), again.Version), (meanwhile.Current, meanwhile.Version));
        Assert.Equal(changed.Write(), (await Store.InUseAsync(_database.Technician)).Write());
        var trail = await _database.Get<LogBookStore>().ReadAsync(_database.Supervisor, db => db.AuditTrail.Where(row => row.Entity == "Phrases").OrderBy(row => row.Id).ToListAsync());
        Assert.Contains(trail, row => row.What == AuditActs.Changed && row.Old == first.Write() && row.New == changed.Write());
    }

    [Fact]
    public async Task Save_ByATechnician_IsRefused()
    {
        Assert.Null(await Store.FindAsync(_database.Technician));
        Assert.IsType<SaveOutcome.NotAllowed>(await Store.SaveAsync(_database.Technician, QuickPhrases.None, 0));
    }

    [Fact]
    public async Task Save_WithoutALanguage_IsRefused()
    {
        var version = (await Store.FindAsync(_database.Supervisor))!.Version;

        var invalid = Assert.IsType<SaveOutcome.Invalid>(await Store.SaveAsync(_database.Supervisor, Of(new Text("moss", "musgo", "")), version));

        Assert.Equal("seen[0].pt", Assert.Single(invalid.Issues).Path);
    }
}

public sealed class PhraseStoreOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : PhraseStoreTests<SqliteDatabase>(fixture);

public sealed class PhraseStoreOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : PhraseStoreTests<PostgresDatabase>(fixture);
