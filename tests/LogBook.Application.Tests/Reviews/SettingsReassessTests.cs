using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Imports;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Rounds;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Reviews;

public sealed class SettingsReassessTests
{
    private static async Task<SqliteDatabase> StartAsync(RoundBuilder round)
    {
        var database = new SqliteDatabase();
        await database.StartAsync();
        database.Clock.SetUtcNow(new DateTimeOffset(round.AsOf(), TimeSpan.Zero));
        var document = round.Document() with
        {
            Customers = [new Customer { Code = "YAF", Name = "Yaffleford College" }],
            People = [new Person { Code = "PUM", Name = "P. Umber", Role = PersonRole.Technician }, new Person { Code = "RYA", Name = "R. Yaffle", Role = PersonRole.Technician }],
            Visits = round.Visits(),
        };
        await using var json = new MemoryStream(System.Text.Encoding.UTF8.GetBytes(ExchangeWriter.Write(document)));
        Assert.Empty((await database.Get<ExchangeImport>().ImportAsync(Viewer.System("test"), json)).Issues);
        await database.Get<AssessmentKeeper>().AssessAllAsync(database.Supervisor);
        return database;
    }

    private static Task<List<FindingRow>> RowsAsync(SqliteDatabase database) =>
        database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Findings.OrderBy(row => row.Id).ToListAsync());

    [Fact]
    public async Task AssessDue_AfterAChangedSetting_RebuildsWithItAndVerifies()
    {
        // A meter that reads 8 % high on all its sites from day 70 on.
        var round = new RoundBuilder { VisitsEach = 8, MeterFactor = (meter, day) => meter == "HM-2" && day >= 70 ? 1.08 : 1 };
        await using var database = await StartAsync(round);
        var administrator = database.Supervisor with { Role = PersonRole.Administrator };
        var keeper = database.Get<AssessmentKeeper>();
        Assert.Equal(0, await keeper.AssessDueAsync(database.Supervisor));
        Assert.Contains(await RowsAsync(database), row => row.Kind == FindingKinds.InstrumentShift);

        Assert.IsType<SaveOutcome.Saved>(await database.Get<SettingStore>().SaveAsync(administrator, new("thresholds:instrumentShiftPercent", null, null, 15, "told to the maker"), 0));

        // What is stored was made with other settings: no fault, but all of it is due.
        Assert.Empty((await database.Get<Verifier>().VerifyAsync(database.Supervisor)).Faults);
        Assert.Equal(round.Sites.Count, await keeper.AssessDueAsync(database.Supervisor));
        var version = (await database.Get<SetUpStore>().FirmAsync(database.Supervisor)).Engine.Version;
        var rows = await RowsAsync(database);
        Assert.DoesNotContain(rows, row => row.Kind == FindingKinds.InstrumentShift && row.State == FindingState.Open);
        Assert.All(rows, row => Assert.Equal(version, row.EngineVersion));
        Assert.NotEqual(Assessment.EngineVersion, version);
        var verified = await database.Get<Verifier>().VerifyAsync(database.Supervisor);
        Assert.Equal((0, round.Sites.Count), (verified.Faults.Count, verified.Systems));
    }

    [Fact]
    public async Task AssessAll_Always_KeepsWhatLiesAheadAsTheDocumentsSay()
    {
        var round = new RoundBuilder { Sites = ["S-1", "S-2"], VisitsEach = 8 };
        await using var database = await StartAsync(round);
        Task<List<string?>> AheadAsync() => database.Get<LogBookStore>().ReadAsync(database.Supervisor, db => db.Systems.Select(row => row.Ahead).ToListAsync());

        var kept = await AheadAsync();

        Assert.Equal(2, kept.Count);
        Assert.All(kept, text => Assert.NotEmpty(KeptAhead.Read(text).Tests));
        await database.Get<LogBookStore>().WriteAsync(database.Supervisor, db => db.Systems.ExecuteUpdateAsync(set => set.SetProperty(row => row.Ahead, "{}")));
        Assert.Equal(2, (await database.Get<Verifier>().VerifyAsync(database.Supervisor)).Faults.Count(fault => fault.Contains("clocks and drums", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task AssessDue_NothingKeptOfWhatLiesAhead_IsDue()
    {
        var round = new RoundBuilder { Sites = ["S-1", "S-2"], VisitsEach = 8 };
        await using var database = await StartAsync(round);
        await database.Get<LogBookStore>().WriteAsync(database.Supervisor, db => db.Systems.ExecuteUpdateAsync(set => set.SetProperty(row => row.Ahead, (string?)null)));

        Assert.Equal(2, await database.Get<AssessmentKeeper>().AssessDueAsync(database.Supervisor));
    }

    [Fact]
    public async Task AssessDue_MarkOfOtherSettings_IsDueThoughNothingSaysSo()
    {
        var round = new RoundBuilder { Sites = ["S-1", "S-2"], VisitsEach = 8 };
        await using var database = await StartAsync(round);

        await database.Get<SettingStore>().SaveAsync(
            database.Supervisor with { Role = PersonRole.Administrator }, new("thresholds:pulsesPercent", "S-1", round.Document().Systems[0].Code, 9, "old meter"), 0);
        await database.SqlAsync("UPDATE \"Systems\" SET \"AssessmentDue\" = NULL");

        Assert.Equal(1, await database.Get<AssessmentKeeper>().AssessDueAsync(database.Supervisor));
        Assert.Equal(0, await database.Get<AssessmentKeeper>().AssessDueAsync(database.Supervisor));
    }
}
