using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Findings;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Visits;

public abstract class VisitIntakeTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>
    where TDatabase : TestDatabase, new()
{
    private readonly TDatabase _database = fixture.Database;

    private LogBookStore Store => _database.Get<LogBookStore>();

    [Fact]
    public async Task Receive_NewVisit_StoresDocumentReadingsAuditAndSummary()
    {
        var visit = SampleFirm.Visit();

        var stored = Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(visit));

        Assert.False(stored.AlreadyKnown);
        Assert.Equal(VisitDocument.Sha256(visit), stored.Sha256);
        var found = await _database.Get<VisitReader>().FindAsync(_database.Technician, visit.Id);
        Assert.Equal(VisitDocument.Canonical(visit), VisitDocument.Canonical(found!.Visit));
        Assert.Equal([105d, 95d], await Store.ReadAsync(_database.Supervisor, db => db.Readings
            .Where(r => r.VisitRowId == found.Row.Id && (r.Test == "chloride" || r.Test == "inhibitor")).OrderBy(r => r.Test).Select(r => r.Value!.Value).ToListAsync()));
        Assert.Equal(["estates@yaffleford.example"], await OutboxAsync(visit, 1));
        Assert.Contains(await AuditAsync(visit), row => row.What == AuditActs.Received && row.New == stored.Sha256 && row.DeviceAt == visit.EnteredAt!.Value.Utc);
    }

    [Fact]
    public async Task Receive_TwiceTheSame_IsOneVisitWithOneAnswer()
    {
        var visit = SampleFirm.Visit(arrived: "2025-03-04T09:05:00+00:00");

        var first = Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(visit));
        var second = Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(visit));

        Assert.True(second.AlreadyKnown);
        Assert.Equal(first.Sha256, second.Sha256);
        Assert.Equal(1, await Store.ReadAsync(_database.Supervisor, db => db.Visits.CountAsync(v => v.VisitId == visit.Id)));
        Assert.Single(await OutboxAsync(visit, 1));
    }

    [Fact]
    public async Task Receive_TheSameManyTimesAtOnce_IsOneVisit()
    {
        var visit = SampleFirm.Visit(arrived: "2025-03-04T12:05:00+00:00");

        var outcomes = await Task.WhenAll(Enumerable.Range(0, 6).Select(_ => Task.Run(() => ReceiveAsync(visit))));

        Assert.Single(outcomes, outcome => !Assert.IsType<IntakeOutcome.Stored>(outcome).AlreadyKnown);
        Assert.Single(await OutboxAsync(visit, 1));
    }

    [Fact]
    public async Task Receive_AgainAfterTheSetUpChanged_GivesTheSameReceipt()
    {
        // The answer was lost, and before the tablet sent again somebody took an output out of the set-up that the visit names.
        var visit = SampleFirm.Visit("PLU-1", "2025-03-05T13:05:00+00:00");
        var first = Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(visit));
        var setUp = _database.Get<SetUpStore>();
        var before = (await setUp.FirmAsync(_database.Supervisor)).System("PLU-1", "CT-1")!;
        await SaveAsync(before with { Outputs = [.. before.Outputs.Where(output => output.Code != "bleed")] });
        try
        {
            Assert.IsType<IntakeOutcome.Refused>(await ReceiveAsync(visit with { Id = Guid.CreateVersion7() }));
            Assert.IsType<IntakeOutcome.Refused>(await ReceiveAsync(visit with { Notes = "something else" }));

            var again = Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(visit));

            Assert.Equal((true, first.Sha256, first.Version), (again.AlreadyKnown, again.Sha256, again.Version));
            Assert.Equal(1, await Store.ReadAsync(_database.Supervisor, db => db.Visits.CountAsync(v => v.VisitId == visit.Id)));
        }
        finally
        {
            await SaveAsync(before);
        }

        async Task SaveAsync(WaterSystem system) => Assert.IsType<SaveOutcome.Saved>(await setUp.SaveAsync(
            _database.Supervisor, system, (await setUp.FindAsync(_database.Supervisor, SetUpKind.System, "CT-1", "PLU-1"))!.Version));
    }

    [Fact]
    public async Task Receive_OtherContentUnderTheSameIdentity_IsKeptAsConflict()
    {
        var visit = SampleFirm.Visit(arrived: "2025-03-05T09:05:00+00:00");
        await ReceiveAsync(visit);
        var other = visit with { Notes = "something else" };

        var conflict = Assert.IsType<IntakeOutcome.Conflict>(await ReceiveAsync(other));
        Assert.IsType<IntakeOutcome.Conflict>(await ReceiveAsync(other));

        Assert.Equal(VisitDocument.Sha256(visit), conflict.CurrentSha256);
        var kept = await Store.ReadAsync(_database.Supervisor, db => db.Conflicts.SingleAsync(c => c.VisitId == visit.Id));
        Assert.Equal(VisitDocument.Canonical(other), kept.Document);
        Assert.Null((await _database.Get<VisitReader>().FindAsync(_database.Technician, visit.Id))!.Visit.Notes);
    }

    [Fact]
    public async Task Receive_Amendment_ReplacesReadingsKeepsBothVersionsAndMailsAgain()
    {
        var visit = SampleFirm.Visit(arrived: "2025-03-06T09:05:00+00:00");
        await ReceiveAsync(visit);

        var stored = Assert.IsType<IntakeOutcome.Stored>(await ReceiveAsync(SampleFirm.Amended(visit, inhibitor: 59)));

        Assert.Equal(2, stored.Version);
        var found = await _database.Get<VisitReader>().FindAsync(_database.Technician, visit.Id);
        Assert.Equal(VisitState.Reissued, found!.Row.State);
        Assert.Equal([1, 2], found.Versions.Select(v => v.Version));
        Assert.Equal(59, await Store.ReadAsync(_database.Supervisor, db => db.Readings.Where(r => r.VisitRowId == found.Row.Id && r.Test == "inhibitor").Select(r => r.Value).SingleAsync()));
        Assert.Single(await OutboxAsync(visit, 2));
        Assert.NotNull(await _database.Get<VisitReader>().FindAsync(_database.Technician, visit.Id, version: 1));
    }

    [Fact]
    public async Task Receive_AmendmentOfWhatIsNotHere_IsRefused()
    {
        var amended = SampleFirm.Amended(SampleFirm.Visit(arrived: "2025-03-06T10:05:00+00:00"), 59);

        var refused = Assert.IsType<IntakeOutcome.Refused>(await ReceiveAsync(amended));

        Assert.Equal("version-gap", Assert.Single(refused.Issues).Code);
    }

    [Fact]
    public async Task Receive_UnknownSystem_IsRefusedAndChangesNothing()
    {
        var visit = SampleFirm.Visit(arrived: "2025-03-07T09:05:00+00:00");
        var before = await CountsAsync();

        var refused = Assert.IsType<IntakeOutcome.Refused>(await ReceiveAsync(visit with { Systems = [visit.Systems[0] with { System = "CT-9" }] }));

        Assert.Contains(refused.Issues, issue => issue.Path.StartsWith("visits[0].systems[0]", StringComparison.Ordinal));
        Assert.Equal(before, await CountsAsync());
    }

    [Fact]
    public async Task Receive_ByACustomer_IsRefused()
    {
        var customer = await _database.OfCustomerAsync("YAF");

        Assert.IsType<IntakeOutcome.NotFound>(await _database.Get<VisitIntake>().ReceiveAsync(customer, SampleFirm.Visit(), IntakeSource.Api));
    }

    [Fact]
    public async Task Receive_SwitchLeftForcedOn_StoresTheFinding()
    {
        await ReceiveAsync(SampleFirm.Visit("PLU-1", "2025-03-09T15:05:00+00:00", bleedSwitch: SwitchPosition.ForcedOn));

        var finding = Assert.Single(await _database.Get<FindingsQuery>().ListAsync(_database.Supervisor, "PLU-1"), f => f.Kind == FindingKinds.SwitchNotAutomatic);
        Assert.Equal(FindingState.Open, finding.State);
        var row = await Store.ReadAsync(_database.Supervisor, db => db.Findings.SingleAsync(f => f.Kind == FindingKinds.SwitchNotAutomatic && f.AboutKey == "output:BLEED"));

        Assert.IsType<SaveOutcome.Saved>(await _database.Get<FindingCare>().AcknowledgeAsync(_database.Supervisor, [new FindingKey("PLU-1", "CT-1", row.Kind, row.AboutKey, row.FirstSeen)], "will call"));

        var answered = await Store.ReadAsync(_database.Supervisor, db => db.Findings.SingleAsync(f => f.Id == row.Id));
        Assert.Equal(FindingState.Acknowledged, answered.State);
    }

    [Fact]
    public async Task Void_ThenRestore_TakesReadingsOutAndBack()
    {
        var visit = SampleFirm.Visit(arrived: "2025-03-09T09:05:00+00:00");
        await ReceiveAsync(visit);
        var care = _database.Get<VisitCare>();
        Task<int> Readings() => Store.ReadAsync(_database.Supervisor, db => db.Readings.CountAsync(r => db.Visits.Any(v => v.Id == r.VisitRowId && v.VisitId == visit.Id)));

        Assert.IsType<SaveOutcome.Invalid>(await care.VoidAsync(_database.Supervisor, visit.Id, " "));
        Assert.IsType<SaveOutcome.NotAllowed>(await care.VoidAsync(_database.Technician, visit.Id, "twice"));
        Assert.IsType<SaveOutcome.Saved>(await care.VoidAsync(_database.Supervisor, visit.Id, "written twice"));
        Assert.Equal(0, await Readings());
        Assert.IsType<SaveOutcome.Saved>(await care.RestoreAsync(_database.Supervisor, visit.Id, "was right"));
        Assert.Equal(5, await Readings());
        Assert.Equal([AuditActs.Received, AuditActs.Voided, AuditActs.Restored], (await AuditAsync(visit)).Select(a => a.What));
    }

    [Fact]
    public async Task Move_ToAnotherCustomersSite_TakesAllOfItBehindTheOtherWall()
    {
        var visit = SampleFirm.Visit(arrived: "2025-03-09T11:05:00+00:00");
        await ReceiveAsync(visit);

        Assert.IsType<SaveOutcome.Saved>(await _database.Get<VisitCare>().MoveAsync(_database.Supervisor, visit.Id, "PLU-1", "wrong site chosen"));

        Assert.Null(await _database.Get<VisitReader>().FindAsync(await _database.OfCustomerAsync("YAF"), visit.Id));
        var found = await _database.Get<VisitReader>().FindAsync(await _database.OfCustomerAsync("PLU"), visit.Id);
        Assert.Equal("PLU-1", found!.Visit.Site);
        Assert.Equal(5, await Store.ReadAsync(await _database.OfCustomerAsync("PLU"), db => db.Readings.CountAsync(r => r.VisitRowId == found.Row.Id)));
    }

    [Fact]
    public async Task Receive_WithMoreHistory_SendsNoMoreStatements()
    {
        var day = new DateTime(2025, 2, 1, 9, 0, 0, DateTimeKind.Utc);
        async Task<int> Next()
        {
            day = day.AddHours(1);
            _database.Statements.Reset();
            await ReceiveAsync(SampleFirm.Visit(arrived: LogBook.Domain.Exchange.Moment.OfUtc(day).Text));

            // SQLite takes one statement for each figure that is another now, and which ones are is the visit's own affair.
            return _database.Statements.Texts.Count(text => !text.StartsWith("UPDATE \"Figures\"", StringComparison.Ordinal));
        }

        await Next();
        var early = await Next();
        for (var i = 0; i < 10; i++)
        {
            await Next();
        }

        Assert.Equal(early, await Next());
        Assert.InRange(early, 1, 50);
    }

    private Task<IntakeOutcome> ReceiveAsync(Visit visit) => _database.Get<VisitIntake>().ReceiveAsync(_database.Technician, visit, IntakeSource.Tablet);

    private Task<List<string>> OutboxAsync(Visit visit, int version) => Store.ReadAsync(_database.Supervisor, db => db.Outbox
        .Where(o => o.VisitVersion == version && db.Visits.Any(v => v.Id == o.VisitRowId && v.VisitId == visit.Id)).Select(o => o.Recipient).ToListAsync());

    private Task<List<AuditRow>> AuditAsync(Visit visit)
    {
        var key = visit.Id.ToString("D");
        return Store.ReadAsync(_database.Supervisor, db => db.AuditTrail.Where(a => a.Key == key).OrderBy(a => a.Id).ToListAsync());
    }

    private Task<(int, int, int, int)> CountsAsync() => Store.ReadAsync(_database.Supervisor, async db =>
        (await db.Visits.CountAsync(), await db.Readings.CountAsync(), await db.AuditTrail.CountAsync(), await db.Outbox.CountAsync()));
}

public sealed class VisitIntakeOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : VisitIntakeTests<SqliteDatabase>(fixture);

public sealed class VisitIntakeOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : VisitIntakeTests<PostgresDatabase>(fixture);
