using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Sites;
using LogBook.Application.Tests.Data;
using LogBook.Application.Visits;
using LogBook.Domain.Assessments;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Testing.Databases;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Tests.Sites;

public abstract class SettingStoreTests<TDatabase>(DatabaseFixture<TDatabase> fixture) : IClassFixture<DatabaseFixture<TDatabase>>
    where TDatabase : TestDatabase, new()
{
    private const string Pulses = "thresholds:pulsesPercent";

    private readonly TDatabase _database = fixture.Database;

    private SettingStore Store => _database.Get<SettingStore>();

    private Viewer Administrator => _database.Supervisor with { Role = PersonRole.Administrator };

    private async Task<EngineSettings> EngineAsync() => (await _database.Get<SetUpStore>().FirmAsync(_database.Technician)).Engine;

    private static OwnSetting Own(double value, string why = "our meters are old", string? site = null, string? system = null) => new(Pulses, site, system, value, why);

    [Fact]
    public async Task Save_ThenReset_IsInForceThenNotAndBothAreOnRecord()
    {
        var before = (await Store.FindAsync(Administrator, Pulses))!;
        Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(Administrator, Own(4.5), before.Version));

        Assert.Equal(4.5, (await EngineAsync()).Thresholds.PulsesPercent.Value);
        var entry = (await Store.FindAsync(Administrator, Pulses))!;
        Assert.Equal((3.0, 4.5, "our meters are old"), (entry.Usual, entry.Own!.Value, entry.Own.Why));

        Assert.IsType<SaveOutcome.Saved>(await Store.ResetAsync(Administrator, Pulses, null, null, "renewed them", entry.Version));

        Assert.Equal(Assessment.EngineVersion, (await EngineAsync()).Version);
        Assert.Null((await Store.FindAsync(Administrator, Pulses))!.Own);
        var steps = await Store.HistoryAsync(Administrator, Pulses);
        Assert.Equal([(null, "renewed them", "I. Wendle"), (4.5, "our meters are old", "I. Wendle")], steps.Take(2).Select(step => (step.Value, step.Why, step.Who)));
        Assert.Empty((await _database.Get<Verifier>().VerifyAsync(_database.Supervisor)).Faults);
    }

    [Fact]
    public async Task Save_ForOneSystem_LeavesTheOthers()
    {
        var entry = (await Store.FindAsync(Administrator, Pulses, "YAF-1", "CT-1"))!;
        Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(Administrator, Own(8, site: "yaf-1", system: "ct-1"), entry.Version));

        var engine = await EngineAsync();
        Assert.Equal((8.0, 3.0), (engine.For("YAF-1", "CT-1").Thresholds.PulsesPercent.Value, engine.Thresholds.PulsesPercent.Value));
        Assert.Equal([("YAF-1", "CT-1", 1)], await Store.SystemsAsync(Administrator));
        Assert.Contains(new EngineSettingChange(Pulses, 8, "YAF-1", "CT-1"), await Store.InUseAsync(_database.Technician));
        Assert.Empty(await Store.InUseAsync(await _database.OfCustomerAsync("YAF")));

        var own = (await Store.FindAsync(Administrator, Pulses, "YAF-1", "CT-1"))!;
        Assert.IsType<SaveOutcome.Saved>(await Store.ResetAsync(Administrator, Pulses, "YAF-1", "CT-1", "as the others", own.Version));
        Assert.Empty(await Store.SystemsAsync(Administrator));
    }

    [Theory]
    [InlineData(90.0, "because", Pulses, "Difference between dial and total: 90 % was found; expected is a number of 0.5 to 50 %.")]
    [InlineData(4.0, "  ", "why", "A reason is needed.")]
    public async Task Save_WhatCannotBe_SaysSoAndWritesNothing(double value, string why, string path, string message)
    {
        var version = (await Store.FindAsync(Administrator, Pulses))!.Version;

        var invalid = Assert.IsType<SaveOutcome.Invalid>(await Store.SaveAsync(Administrator, Own(value, why), version));

        Assert.Equal((path, message), (Assert.Single(invalid.Issues).Path, invalid.Issues[0].Message.Replace('\u00a0', ' ')));
        Assert.Equal(version, (await Store.FindAsync(Administrator, Pulses))!.Version);
    }

    [Fact]
    public async Task Save_ByTwoWhoReadTheSame_TellsTheSecondWhatStands()
    {
        const string Clock = "thresholds:clockMinutes";
        var version = (await Store.FindAsync(Administrator, Clock))!.Version;
        Assert.IsType<SaveOutcome.Saved>(await Store.SaveAsync(Administrator, new(Clock, null, null, 20, "strict"), version));

        var second = Assert.IsType<SaveOutcome.ChangedMeanwhile>(await Store.SaveAsync(Administrator, new(Clock, null, null, 40, "easy"), version));

        Assert.Equal(20, OwnSetting.Read(second.Current).Value);
        await Store.ResetAsync(Administrator, Clock, null, null, "end of the test", second.Version);
    }

    [Fact]
    public async Task Save_ByWhoIsNoAdministrator_IsNotAllowed()
    {
        Assert.IsType<SaveOutcome.NotAllowed>(await Store.SaveAsync(_database.Supervisor, Own(4), 0));
        Assert.IsType<SaveOutcome.NotAllowed>(await Store.ResetAsync(_database.Technician, Pulses, null, null, "why", 1));
        Assert.Empty(await Store.ListAsync(_database.Supervisor));
        Assert.Empty(await Store.HistoryAsync(_database.Supervisor, Pulses));
    }

    [Fact]
    public async Task Save_SystemThatIsNotThere_IsNotFound() =>
        Assert.IsType<SaveOutcome.NotFound>(await Store.SaveAsync(Administrator, Own(4, site: "YAF-1", system: "CT-9"), 0));
}

public sealed class SettingStoreOnSqliteTests(DatabaseFixture<SqliteDatabase> fixture) : SettingStoreTests<SqliteDatabase>(fixture);

public sealed class SettingStoreOnPostgreSqlTests(DatabaseFixture<PostgresDatabase> fixture) : SettingStoreTests<PostgresDatabase>(fixture);
