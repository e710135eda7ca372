using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Tests.Rounds;
using LogBook.Domain.Visits;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.Logging.Abstractions;

namespace LogBook.Application.Tests.Reviews;

public sealed class RoundKeeperTests
{
    // Meter and lot shift on day 70, a late result, an amendment, and a record that wants a second look.
    private static RoundBuilder Round() => new()
    {
        VisitsEach = 8,
        MeterFactor = (meter, day) => meter == "HM-2" && day >= 70 ? 1.08 : 1,
        LotAt = (site, day) => day < 70 ? "IN-1" : site is "S-5" or "S-6" ? "IN-3" : "IN-2",
        LotFactor = lot => lot == "IN-2" ? 1.25 : 1,
        Change = visit => visit.Site == "S-6" && visit.Arrived.Utc > RoundBuilder.Start.AddDays(95) ? Hurried(visit) : visit,
    };

    private static Visit Hurried(Visit visit) => visit with
    {
        Left = Moment.OfUtc(visit.Arrived.Utc.AddMinutes(2)),
        Systems = [visit.Systems[0] with { Probes = [visit.Systems[0].Probes[0] with { SettledMin = null }] }],
    };

    private static List<Visit> Visits(RoundBuilder round)
    {
        var visits = round.Visits();
        var late = visits.FindIndex(visit => visit.Site == "S-1" && visit.Arrived.Utc > RoundBuilder.Start.AddDays(80));
        visits[late] = visits[late] with
        {
            Systems = [visits[late].Systems[0] with { Readings = [.. visits[late].Systems[0].Readings, HistoryBuilder.Tower(TestCodes.ColonyCount, 2e4, "[CFU]/mL") with { Source = ReadingSource.Lab, ResultAt = Moment.OfUtc(visits[late].Arrived.Utc.AddDays(9)) }] }],
        };
        var wrong = visits.First(visit => visit.Site == "S-2" && visit.Arrived.Utc > RoundBuilder.Start.AddDays(80));
        visits.Add(wrong with
        {
            Version = 2,
            Amends = 1,
            AmendedBy = "PUM",
            Reason = "display misread",
            AmendedAt = Moment.OfUtc(wrong.Arrived.Utc.AddDays(3)),
            Systems = [wrong.Systems[0] with { Probes = [wrong.Systems[0].Probes[0] with { AsFound = Math.Round(wrong.Systems[0].Probes[0].AsFound * 0.9) }] }],
        });
        return visits;
    }

    private static async Task<SqliteDatabase> StartAsync(RoundBuilder round, DateTime? now = null)
    {
        var database = new SqliteDatabase();
        await database.StartAsync();
        database.Clock.SetUtcNow(new DateTimeOffset(now ?? round.AsOf(), TimeSpan.Zero));
        var document = round.Document() with
        {
            Customers = [new Customer { Code = "YAF", Name = "Yaffleford College" }],
            People = [new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician }, new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician }],
        };
        await using var json = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(ExchangeWriter.Write(document)));
        Assert.Empty((await database.Get<ExchangeImport>().ImportAsync(Viewer.System("test"), json)).Issues);
        return database;
    }

    private static async Task<string> StoredAsync(SqliteDatabase database) => string.Join('\n', (await database.Get<LogBookStore>().ReadAsync(
        database.Supervisor, db => db.Findings.Select(row => row.English + row.Spanish + row.Portuguese).ToListAsync())).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    public async Task Stored_VisitByVisitInAnyOrder_IsWhatARebuildGives(int seed)
    {
        var round = Round();
        var visits = Visits(round);
        new Random(seed).Shuffle(System.Runtime.InteropServices.CollectionsMarshal.AsSpan(visits));

        // A visit must be there before it is amended.
        visits = [.. visits.Where(visit => visit.Version is null), .. visits.Where(visit => visit.Version > 1)];
        await using var database = await StartAsync(round);
        foreach (var visit in visits)
        {
            var outcome = await database.Get<VisitIntake>().ReceiveAsync(database.Supervisor, visit, IntakeSource.Import);
            Assert.True(outcome is IntakeOutcome.Stored, outcome is IntakeOutcome.Refused refused ? string.Join('\n', refused.Issues) : outcome.ToString());
        }

        var step = await StoredAsync(database);
        Assert.Empty((await database.Get<Verifier>().VerifyAsync(database.Supervisor)).Faults);
        await database.Get<AssessmentKeeper>().AssessAllAsync(database.Supervisor);

        Assert.Equal(await StoredAsync(database), step);
        Assert.Contains("instrument-shift", step, StringComparison.Ordinal);
        Assert.Contains("lot-shift", step, StringComparison.Ordinal);
        Assert.Contains("\"withdrawn\"", step, StringComparison.Ordinal);
        var asOf = await database.Get<FindingsQuery>().ListAsync(database.Supervisor, asOf: round.AsOf());
        Assert.Equal(
            asOf.Select(ExchangeWriter.CanonicalOf).Order(StringComparer.Ordinal),
            (await database.Get<FindingsQuery>().ListAsync(database.Supervisor)).Select(ExchangeWriter.CanonicalOf).Order(StringComparer.Ordinal));

        // A second look is for reviewers alone, by whatever way it is asked for.
        Assert.Contains(asOf, finding => finding.Kind == FindingKinds.SecondLook);
        Assert.DoesNotContain(await database.Get<FindingsQuery>().ListAsync(database.Technician), finding => finding.Kind == FindingKinds.SecondLook);
        Assert.DoesNotContain(await database.Get<FindingsQuery>().ListAsync(database.Technician, asOf: round.AsOf()), finding => finding.Kind == FindingKinds.SecondLook);
    }

    [Fact]
    public async Task CloseAsync_EvidenceComesBack_IsANewFindingThatNamesItsEarlierSelf()
    {
        var round = new RoundBuilder { Sites = ["S-1"], VisitsEach = 8, Inhibitor = (_, _) => 10 };
        var visits = round.Visits();
        await using var database = await StartAsync(round, visits[5].Left!.Value.Utc.AddHours(1));
        foreach (var visit in visits.Take(6))
        {
            await database.Get<VisitIntake>().ReceiveAsync(database.Supervisor, visit, IntakeSource.Import);
        }

        var care = database.Get<FindingCare>();
        Assert.IsType<SaveOutcome.Invalid>(await care.CloseAsync(database.Supervisor, [], " "));
        Assert.IsType<SaveOutcome.NotAllowed>(await care.CloseAsync(database.Technician, [], "pump line purged"));
        var open = (await RowsAsync(database)).Single(row => row.Kind == FindingKinds.ResidualLow);
        Assert.IsType<SaveOutcome.Saved>(await care.CloseAsync(database.Supervisor, [new FindingKey("S-1", "CT-1", open.Kind, open.AboutKey, open.FirstSeen)], "pump line purged"));

        var closed = (await RowsAsync(database)).Single(row => row.Kind == FindingKinds.ResidualLow);
        Assert.Equal(FindingState.Closed, closed.State);
        Assert.Contains("pump line purged", closed.English, StringComparison.Ordinal);
        Assert.Empty((await database.Get<Verifier>().VerifyAsync(database.Supervisor)).Faults);

        database.Clock.SetUtcNow(new DateTimeOffset(visits[6].Left!.Value.Utc.AddHours(1), TimeSpan.Zero));
        await database.Get<VisitIntake>().ReceiveAsync(database.Supervisor, visits[6], IntakeSource.Import);
        var rows = (await RowsAsync(database)).Where(row => row.Kind == FindingKinds.ResidualLow).OrderBy(row => row.FirstSeen).ToList();
        Assert.Equal([FindingState.Closed, FindingState.Open], rows.Select(row => row.State));
        Assert.Equal(rows[0].FirstSeen, Documents.Finding(rows[1].English).Earlier);
    }

    [Fact]
    public async Task SnoozeAsync_UntilADay_SleepsThatDayAndStandsOpenTheNext()
    {
        var round = new RoundBuilder { Sites = ["S-1"], VisitsEach = 6, Inhibitor = (_, _) => 10 };
        await using var database = await StartAsync(round);
        foreach (var visit in round.Visits())
        {
            await database.Get<VisitIntake>().ReceiveAsync(database.Supervisor, visit, IntakeSource.Import);
        }

        var open = (await RowsAsync(database)).Single(row => row.Kind == FindingKinds.ResidualLow);
        Assert.Equal(FindingState.Open, open.State);
        var until = DateOnly.FromDateTime(round.AsOf()).AddDays(3);
        Assert.IsType<SaveOutcome.Saved>(await database.Get<FindingCare>().SnoozeAsync(
            database.Supervisor, [new FindingKey("S-1", "CT-1", open.Kind, open.AboutKey, open.FirstSeen)], until, "new pump is ordered"));

        Assert.Equal(FindingState.Snoozed, await StateAsync(until));
        Assert.Equal(FindingState.Open, await StateAsync(until.AddDays(1)));

        async Task<FindingState> StateAsync(DateOnly day)
        {
            database.Clock.SetUtcNow(new DateTimeOffset(day, new TimeOnly(12, 0), TimeSpan.Zero));
            await database.Get<AssessmentKeeper>().AssessAllAsync(database.Supervisor);
            return (await RowsAsync(database)).Single(row => row.Kind == FindingKinds.ResidualLow).State;
        }
    }

    [Fact]
    public async Task AssessmentService_AfterAMinute_AssessesWhatIsDue()
    {
        var round = new RoundBuilder { Sites = ["S-1"], VisitsEach = 6 };
        await using var database = await StartAsync(round);
        await database.Get<LogBookStore>().WriteAsync(database.Supervisor, db => db.Systems.ExecuteUpdateAsync(set => set.SetProperty(row => row.AssessmentDue, round.AsOf())));
        using var service = new AssessmentService(database.Get<AssessmentKeeper>(), database.Clock, NullLogger<AssessmentService>.Instance);
        await service.StartAsync(default);
        Assert.NotNull(await DueAsync(database));

        // The clock stands still: each turn is one minute of it, and the work of a turn ends in its own time.
        for (var i = 0; i < 2000 && await DueAsync(database) is not null; i++)
        {
            database.Clock.Advance(AssessmentService.Pause);
            await Task.Yield();
        }

        Assert.Null(await DueAsync(database));
        await service.StopAsync(default);
    }

    private static Task<DateTime?> DueAsync(SqliteDatabase database) =>
        database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Systems.Select(row => row.AssessmentDue).SingleAsync());

    private static Task<List<FindingRow>> RowsAsync(SqliteDatabase database) =>
        database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Findings.ToListAsync());
}
