using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Visits;

public abstract class DraftStoreTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>, IAsyncLifetime
    where TDatabase : TestDatabase, new()
{
    private readonly TDatabase _database = fixture.Database;
    private readonly Guid _visit = Guid.CreateVersion7();
    private Viewer _writer = default!;
    private Viewer _other = default!;

    private DraftStore Drafts => _database.Get<DraftStore>();

    public async Task InitializeAsync()
    {
        _writer = _database.Technician with { UserId = await UserAsync() };
        _other = _database.Technician with { UserId = await UserAsync() };
    }

    [Fact]
    public async Task Save_NewThenAgain_CountsVersionsAndKeepsTheLatest()
    {
        Assert.Equal(1, Assert.IsType<SaveOutcome.Saved>(await Drafts.SaveAsync(_writer, _visit, "yaf-1", "one", 0)).Version);
        Assert.Equal(2, Assert.IsType<SaveOutcome.Saved>(await Drafts.SaveAsync(_writer, _visit, "YAF-1", "two", 1)).Version);

        var draft = Assert.Single(await Drafts.ListAsync(_writer));
        Assert.Equal((_visit, "YAF-1", "two", 2), (draft.VisitId, draft.Site, draft.Document, draft.Version));
    }

    [Fact]
    [Trait("goal", "R5")]
    public async Task Save_FromAnOlderCopy_IsRefusedWithWhatStands()
    {
        await Drafts.SaveAsync(_writer, _visit, "YAF-1", "one", 0);
        await Drafts.SaveAsync(_writer, _visit, "YAF-1", "from the other tab", 1);

        var refused = Assert.IsType<SaveOutcome.ChangedMeanwhile>(await Drafts.SaveAsync(_writer, _visit, "YAF-1", "stale", 1));

        Assert.Equal(("from the other tab", 2), (refused.Current, refused.Version));
        Assert.Equal("from the other tab", (await Drafts.FindAsync(_writer, _visit))!.Document);
    }

    [Fact]
    public async Task Save_OfADraftThatIsGoneOrAtNoSite_FindsNothing()
    {
        Assert.IsType<SaveOutcome.NotFound>(await Drafts.SaveAsync(_writer, _visit, "YAF-1", "one", 3));
        Assert.IsType<SaveOutcome.NotFound>(await Drafts.SaveAsync(_writer, _visit, "NONE-1", "one", 0));
        Assert.Null(await Drafts.FindAsync(_writer, _visit));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Draft_IsItsWritersAlone()
    {
        await Drafts.SaveAsync(_writer, _visit, "YAF-1", "mine", 0);

        Assert.Null(await Drafts.FindAsync(_other, _visit));
        Assert.False(await Drafts.DiscardAsync(_other, _visit, "not mine"));
        Assert.Equal(1, Assert.IsType<SaveOutcome.Saved>(await Drafts.SaveAsync(_other, _visit, "YAF-1", "theirs", 0)).Version);
        Assert.Equal("mine", (await Drafts.FindAsync(_writer, _visit))!.Document);
        Assert.IsType<SaveOutcome.NotAllowed>(await Drafts.SaveAsync(await _database.OfCustomerAsync("YAF") with { UserId = _writer.UserId }, Guid.CreateVersion7(), "YAF-1", "none", 0));
        Assert.IsType<SaveOutcome.NotAllowed>(await Drafts.SaveAsync(_database.Technician, Guid.CreateVersion7(), "YAF-1", "no account", 0));
    }

    [Fact]
    public async Task DeleteReceived_OnlyOnceTheServerHoldsThatContent()
    {
        var visit = SampleFirm.Visit(arrived: _database.Clock.GetUtcNow().AddMinutes(-_writer.UserId!.Value).ToString("yyyy-MM-dd'T'HH:mm:sszzz", System.Globalization.CultureInfo.InvariantCulture));
        await Drafts.SaveAsync(_writer, visit.Id, "YAF-1", "draft", 0);

        Assert.False(await Drafts.DeleteReceivedAsync(_writer, visit.Id, VisitDocument.Sha256(visit)));
        var stored = Assert.IsType<IntakeOutcome.Stored>(await _database.Get<VisitIntake>().ReceiveAsync(_writer, visit, IntakeSource.Page));
        Assert.False(await Drafts.DeleteReceivedAsync(_writer, visit.Id, new string('0', 64)));
        Assert.NotNull(await Drafts.FindAsync(_writer, visit.Id));

        Assert.True(await Drafts.DeleteReceivedAsync(_writer, visit.Id, stored.Sha256));
        Assert.Null(await Drafts.FindAsync(_writer, visit.Id));
    }

    [Fact]
    [Trait("goal", "S5")]
    public async Task Discard_LeavesTheTextAndTheReasonInTheAuditTrail()
    {
        await Drafts.SaveAsync(_writer, _visit, "YAF-1", "half a visit", 0);

        Assert.True(await Drafts.DiscardAsync(_writer, _visit, "began at the wrong site"));

        Assert.Empty(await Drafts.ListAsync(_writer));
        var audit = await _database.Get<LogBookStore>().ReadAsync(_database.Supervisor, db => db.AuditTrail.SingleAsync(row => row.What == AuditActs.Discarded && row.Key == _visit.ToString("D")));
        Assert.Equal(("half a visit", "began at the wrong site"), (audit.Old, audit.Why));
    }

    public Task DisposeAsync() => Task.CompletedTask;

    private async Task<int> UserAsync()
    {
        var user = new LogBookUser { UserName = $"{Guid.CreateVersion7():N}@quernwath.example", Email = "r.yaffle@quernwath.example", PersonCode = "RYA" };
        await _database.Get<LogBookStore>().WriteAsync(Viewer.System("test"), async db =>
        {
            db.Users.Add(user);
            await db.SaveChangesAsync();
        });
        return user.Id;
    }
}

public sealed class DraftStoreOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : DraftStoreTests<SqliteDatabase>(fixture);

public sealed class DraftStoreOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : DraftStoreTests<PostgresDatabase>(fixture);
