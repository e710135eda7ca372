using System.Data.Common;
using LogBook.Application.Backups;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Testing.Databases;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Diagnostics;
using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace LogBook.Application.Tests.Data;

public sealed class StartUpTests
{
    [Fact]
    public async Task Start_OnAnOlderSchema_BacksUpFirstAndThenMigrates()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();
        Assert.False(Directory.Exists(database.Options.BackupFolder), "The first start has nothing to save.");

        await StartUp(database, builder => builder.ReplaceService<IMigrationsAssembly, OneMigrationMore>()).RunAsync();

        Assert.Equal(1L, await AskAsync(database.File, "SELECT count(*) FROM sqlite_master WHERE name = 'OneMore'"));
        var backup = Assert.Single(Directory.GetFiles(database.Options.BackupFolder!));
        Assert.Equal(0L, await AskAsync(backup, "SELECT count(*) FROM sqlite_master WHERE name = 'OneMore'"));
        Assert.Equal(2L, await AskAsync(backup, "SELECT count(*) FROM Sites"));
    }

    [Fact]
    public async Task Start_WhenTheBackupFails_DoesNotMigrate()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();

        // A file where the folder of backups should be.
        await File.WriteAllTextAsync(database.Options.BackupFolder!, "in the way");

        await Assert.ThrowsAnyAsync<IOException>(() => StartUp(database, builder => builder.ReplaceService<IMigrationsAssembly, OneMigrationMore>()).RunAsync());

        Assert.Equal(0L, await AskAsync(database.File, "SELECT count(*) FROM sqlite_master WHERE name = 'OneMore'"));
    }

    [Fact]
    public async Task Start_OnThisSchema_MakesNoBackup()
    {
        await using var database = new SqliteDatabase();
        await database.StartWithSampleFirmAsync();

        await database.Get<LogBookStartUp>().RunAsync();

        Assert.False(Directory.Exists(database.Options.BackupFolder));
    }

    [Theory]
    [InlineData("PRAGMA journal_mode=DELETE", "WAL")]
    [InlineData("PRAGMA synchronous=NORMAL", "synchronous")]
    [InlineData("PRAGMA synchronous=OFF", "synchronous")]
    [InlineData("PRAGMA foreign_keys=OFF", "foreign_keys")]
    public async Task Start_WithAnUnsafeSetting_IsRefused(string setting, string said)
    {
        await using var database = new SqliteDatabase();
        await database.StartAsync();
        SqliteConnection.ClearAllPools();

        var refusal = await Assert.ThrowsAsync<InvalidOperationException>(
            () => StartUp(database, builder => builder.AddInterceptors(new AfterOpening(setting))).PrepareAsync());

        Assert.Contains(said, refusal.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Start_WithTheSettingsOfThisProgram_IsNot()
    {
        await using var database = new SqliteDatabase();

        await StartUp(database, _ => { }).PrepareAsync();

        Assert.True(Version.Parse((string)(await AskAsync(database.File, "SELECT sqlite_version()"))!) >= new Version(3, 51, 3));
    }

    private static LogBookStartUp StartUp(SqliteDatabase database, Action<DbContextOptionsBuilder> configure)
    {
        var builder = new DbContextOptionsBuilder<LogBookDb>();
        builder.UseLogBook(database.Options);
        configure(builder);
        return new LogBookStartUp(new PooledDbContextFactory<LogBookDb>(builder.Options), database.Get<BackupMaker>(), database.Get<AssessmentKeeper>(), database.Options);
    }

    private static async Task<object?> AskAsync(string file, string question)
    {
        await using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false }.ToString());
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
        command.CommandText = question;
        return await command.ExecuteScalarAsync();
    }

    /// <summary>As an unlucky driver or an eager person would set it, after the program's own settings.</summary>
    private sealed class AfterOpening(string setting) : DbConnectionInterceptor
    {
        public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Set(connection);

        public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
        {
            Set(connection);
            return Task.CompletedTask;
        }

        private void Set(DbConnection connection)
        {
            // Whether the database exists is asked over a connection that may not write.
            if (new SqliteConnectionStringBuilder(connection.ConnectionString).Mode == SqliteOpenMode.ReadOnly)
            {
                return;
            }

            using var command = connection.CreateCommand();
            command.CommandText = setting;
            command.ExecuteNonQuery();
        }
    }
}
