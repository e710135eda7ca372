using LogBook.Application.Audit;
using LogBook.Application.Clocks;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Clocks;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Clocks;

public abstract class NoticeStoreTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>
    where TDatabase : TestDatabase, new()
{
    private readonly TDatabase _database = fixture.Database;

    // The tests share a system, whose page shows the oldest result that was not told.
    private const double NothingToTell = 1;

    private NoticeStore Notices => _database.Get<NoticeStore>();

    [Fact]
    public async Task Record_ThenTakeBack_MeetsTheCountdownAndOpensItAgain()
    {
        var visit = await ReceiveAsync("2025-03-08T09:05:00+00:00");
        Assert.Equal(ClockStanding.Missed, (await CountdownAsync(visit)).Standing);

        Assert.IsType<SaveOutcome.Saved>(await Notices.RecordAsync(_database.Technician, "yaf-1", "ct-1", Told(visit)));
        await _database.Get<AssessmentKeeper>().AssessDueAsync(_database.Supervisor);

        var met = await CountdownAsync(visit);
        Assert.Equal((ClockStanding.Met, Told(visit).At), (met.Standing, met.Clock.LastDone!.Value));
        var done = Assert.Single((await _database.Get<CountsQuery>().OfAsync(_database.Technician, "YAF-1"))!).Responses.Single(response => response.Visit == visit).Done;
        Assert.Contains(done, act => act.Visit is null);
        Assert.Empty((await _database.Get<Verifier>().VerifyAsync(_database.Supervisor)).Faults);

        Assert.IsType<SaveOutcome.NotAllowed>(await Notices.TakeBackAsync(_database.Technician, "YAF-1", "CT-1", visit, TestCodes.Legionella, "OXT-LEG", "wrong result"));
        Assert.IsType<SaveOutcome.Saved>(await Notices.TakeBackAsync(_database.Supervisor, "YAF-1", "CT-1", visit, TestCodes.Legionella, "OXT-LEG", "wrong result"));
        await _database.Get<AssessmentKeeper>().AssessDueAsync(_database.Supervisor);

        Assert.Equal(ClockStanding.Missed, (await CountdownAsync(visit)).Standing);
        var trail = await _database.Get<LogBookStore>().ReadAsync(
            _database.Supervisor, db => db.AuditTrail.Where(row => row.Entity == "Notice" && row.Key.Contains(visit.ToString("N"))).OrderBy(row => row.Id).Select(row => new { row.What, row.Who, row.Why }).ToListAsync());
        Assert.Equal([(AuditActs.Added, "R. Yaffle", null), (AuditActs.Retired, "I. Wendle", "wrong result")], trail.Select(row => (row.What, row.Who, row.Why)));
    }

    [Fact]
    public async Task Record_NotWhole_IsRefused()
    {
        var visit = await ReceiveAsync("2025-03-06T09:05:00+00:00", NothingToTell);

        Assert.Equal(["to", "how"], Assert.IsType<SaveOutcome.Invalid>(await Notices.RecordAsync(_database.Technician, "YAF-1", "CT-1", Told(visit) with { To = " ", How = "" })).Issues.Select(issue => issue.Path));
        Assert.Equal(["at"], Assert.IsType<SaveOutcome.Invalid>(await Notices.RecordAsync(_database.Technician, "YAF-1", "CT-1", Told(visit) with { At = _database.Clock.GetUtcNow().UtcDateTime.AddMinutes(5) })).Issues.Select(issue => issue.Path));
        Assert.Equal(["at"], Assert.IsType<SaveOutcome.Invalid>(await Notices.RecordAsync(_database.Technician, "YAF-1", "CT-1", Told(visit) with { At = new DateTime(2025, 3, 1, 0, 0, 0, DateTimeKind.Utc) })).Issues.Select(issue => issue.Path));
        Assert.IsType<SaveOutcome.NotFound>(await Notices.RecordAsync(_database.Technician, "PLU-1", "CT-1", Told(visit)));
        Assert.IsType<SaveOutcome.NotFound>(await Notices.RecordAsync(_database.Technician, "YAF-1", "CT-1", Told(Guid.CreateVersion7())));
    }

    [Fact]
    public async Task Record_BeforeTheResultCameIn_IsRefusedAndNamesBothMoments()
    {
        // Arrived at 09:05, the result came in at 11:05.
        var visit = await ReceiveAsync("2025-03-04T09:05:00+00:00", NothingToTell);

        var early = Told(visit) with { At = new DateTime(2025, 3, 4, 10, 0, 0, DateTimeKind.Utc) };
        var issue = Assert.Single(Assert.IsType<SaveOutcome.Invalid>(await Notices.RecordAsync(_database.Technician, "YAF-1", "CT-1", early)).Issues);

        Assert.Equal(("at", "before-receipt"), (issue.Path, issue.Code));
        Assert.Contains("2025-03-04 10:00", issue.Message, StringComparison.Ordinal);
        Assert.Contains("2025-03-04 11:05", issue.Message, StringComparison.Ordinal);
        Assert.IsType<SaveOutcome.Saved>(await Notices.RecordAsync(_database.Technician, "YAF-1", "CT-1", early with { At = new DateTime(2025, 3, 4, 11, 5, 0, DateTimeKind.Utc) }));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task Record_ByACustomer_IsRefused()
    {
        var visit = await ReceiveAsync("2025-03-05T09:05:00+00:00", NothingToTell);
        var customer = await _database.OfCustomerAsync("YAF");

        Assert.IsType<SaveOutcome.NotAllowed>(await Notices.RecordAsync(customer, "YAF-1", "CT-1", Told(visit)));
        Assert.IsType<SaveOutcome.NotAllowed>(await Notices.TakeBackAsync(customer, "YAF-1", "CT-1", visit, TestCodes.Legionella, "OXT-LEG", "no"));
        Assert.Null(await _database.Get<CountsQuery>().OfAsync(customer, "YAF-1"));
    }

    private static Notification Told(Guid visit) => new(visit, TestCodes.Legionella, "OXT-LEG", new DateTime(2025, 3, 8, 15, 30, 0, DateTimeKind.Utc), "I. Wendle", "Oxterhelm health office", "by telephone, reference OX-114");

    private async Task<ClockLine> CountdownAsync(Guid visit) =>
        Assert.Single(
            (await _database.Get<ClocksQuery>().ListAsync(_database.Supervisor, new ClocksFilter("YAF-1", Kind: DutyKind.Notify)))!.Rows
                .Concat((await _database.Get<ClocksQuery>().ListAsync(_database.Supervisor, new ClocksFilter("YAF-1", Kind: DutyKind.Notify, Standing: ClockStanding.Met)))!.Rows),
            line => line.Clock.Visit == visit);

    private async Task<Guid> ReceiveAsync(string arrived, double value = 1_500)
    {
        var setUp = _database.Get<SetUpStore>();
        var firm = await setUp.FirmAsync(_database.Supervisor);
        var rule = firm.Rules.Single(known => known.Code == "OXT-LEG");
        if (rule.Bands.All(band => band.NotifyWithinHours is null))
        {
            var wanted = rule with { Bands = [.. rule.Bands.Select(band => band.Severity == Severity.Act ? band with { NotifyWithinHours = 24 } : band)] };
            Assert.IsType<SaveOutcome.Saved>(await setUp.SaveAsync(_database.Supervisor, wanted, (await setUp.FindAsync(_database.Supervisor, SetUpKind.Rule, "OXT-LEG", from: rule.From))!.Version));
        }

        var visit = SampleFirm.Visit(arrived: arrived);
        var record = visit.Systems[0];
        visit = visit with
        {
            Systems =
            [
                record with
                {
                    Readings = [.. record.Readings, new Reading { At = SamplePoints.Tower, Test = TestCodes.Legionella, Source = ReadingSource.Lab, Value = value, Unit = "[CFU]/mL", ReceivedAt = Moment.OfUtc(visit.Arrived.Utc.AddHours(2)), ResultAt = Moment.OfUtc(visit.Arrived.Utc.AddHours(1)) }],
                },
            ],
        };
        Assert.IsType<IntakeOutcome.Stored>(await _database.Get<VisitIntake>().ReceiveAsync(_database.Technician, visit, IntakeSource.Tablet));
        _database.Clock.SetUtcNow(new DateTimeOffset(2025, 3, 10, 8, 0, 0, TimeSpan.Zero));
        await _database.Get<AssessmentKeeper>().AssessDueAsync(_database.Supervisor);
        return visit.Id;
    }
}

public sealed class NoticeStoreOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : NoticeStoreTests<SqliteDatabase>(fixture);

public sealed class NoticeStoreOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : NoticeStoreTests<PostgresDatabase>(fixture);
