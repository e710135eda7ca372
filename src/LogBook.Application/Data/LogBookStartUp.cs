using System.Globalization;
using LogBook.Application.Backups;
using LogBook.Application.Reviews;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Application.Data;

/// <summary>What happens before the first request: schema, automatic backup, checks of the engine's settings, due assessments.</summary>
public sealed class LogBookStartUp(IDbContextFactory<LogBookDb> contexts, BackupMaker backups, AssessmentKeeper assessments, LogBookOptions options)
{
    private static readonly Version OldestSqlite = new(3, 51, 3);

    /// <summary>Brings the database to this program's schema and checks it; refuses one that a newer LogBook wrote.</summary>
    /// <exception cref="NewerSchemaException">The database was written by a newer LogBook.</exception>
    public async Task RunAsync(CancellationToken cancellationToken = default)
    {
        await PrepareAsync(cancellationToken);
        await assessments.AssessDueAsync(Viewer.System("start-up"), null, cancellationToken);
    }

    /// <summary>As <see cref="RunAsync"/>, without the assessments.</summary>
    public async Task PrepareAsync(CancellationToken cancellationToken = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancellationToken);
        var known = db.Database.GetMigrations().ToList();
        string[] applied = await db.Database.CanConnectAsync(cancellationToken) ? [.. await db.Database.GetAppliedMigrationsAsync(cancellationToken)] : [];
        if (applied.Except(known, StringComparer.Ordinal).FirstOrDefault() is { } foreign)
        {
            throw new NewerSchemaException(foreign);
        }

        // Only when there is something to do: the migration's own lock would outlive a killed process.
        if (applied.Length < known.Count)
        {
            if (applied.Length > 0)
            {
                await backups.BackupAsync(Viewer.System("start-up"), options.BackupFolderOrDefault, cancellationToken);
            }

            await db.Database.MigrateAsync(cancellationToken);
        }

        if (options.IsSqlite)
        {
            await CheckSqliteAsync(db, cancellationToken);
        }
    }

    private static async Task CheckSqliteAsync(LogBookDb db, CancellationToken cancellationToken)
    {
        await db.Database.OpenConnectionAsync(cancellationToken);

        // SQLite before 3.51.3 can corrupt a WAL database when a write meets a checkpoint.
        var version = await AskAsync(db, "SELECT sqlite_version()", cancellationToken);
        Require(Version.Parse(version) >= OldestSqlite, $"SQLite {OldestSqlite} or later is needed, this is {version}.");
        Require(await AskAsync(db, "PRAGMA journal_mode", cancellationToken) == "wal", "The database is not in WAL mode: is it on a network share?");
        Require(await AskAsync(db, "PRAGMA synchronous", cancellationToken) == "2", "SQLite does not wait for the disk (synchronous).");
        Require(await AskAsync(db, "PRAGMA foreign_keys", cancellationToken) == "1", "SQLite does not check references (foreign_keys).");
        await db.Database.CloseConnectionAsync();
    }

    private static async Task<string> AskAsync(LogBookDb db, string question, CancellationToken cancellationToken)
    {
        await using var command = db.Database.GetDbConnection().CreateCommand();
#pragma warning disable CA2100 // Constants of this class.
        command.CommandText = question;
#pragma warning restore CA2100
        return Convert.ToString(await command.ExecuteScalarAsync(cancellationToken), CultureInfo.InvariantCulture) ?? "";
    }

    private static void Require(bool holds, string message)
    {
        if (!holds)
        {
            throw new InvalidOperationException(message);
        }
    }
}
