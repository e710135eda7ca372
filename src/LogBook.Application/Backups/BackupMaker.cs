using System.Globalization;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Application.Data.Conventions;
using Microsoft.Data.Sqlite;
using Npgsql;

namespace LogBook.Application.Backups;

/// <summary>Makes and restores backups.</summary>
/// <remarks>
/// SQLite: VACUUM INTO, which reads one consistent state while work goes on; the live files are never copied. PostgreSQL: the
/// server's own pg_dump and pg_restore.
/// </remarks>
public sealed class BackupMaker(TimeProvider clock, LogBookOptions options)
{
    /// <summary>Writes a consistent copy while work goes on.</summary>
    /// <returns>Path of the backup.</returns>
    public async Task<string> BackupAsync(Viewer viewer, string folder, CancellationToken cancellationToken = default)
    {
        RequireAdministrator(viewer);
        Directory.CreateDirectory(folder);
        var name = "logbook-" + Utc.Now(clock).ToString("yyyyMMdd'T'HHmmssfff'Z'", CultureInfo.InvariantCulture);
        var target = Path.Combine(folder, name + (options.IsSqlite ? ".db" : ".dump"));
        for (var i = 2; File.Exists(target); i++)
        {
            target = Path.Combine(folder, $"{name}-{i}{(options.IsSqlite ? ".db" : ".dump")}");
        }

        // Under another name until it is whole: a half-written file must not look like a backup.
        var unfinished = target + ".unfinished";
        File.Delete(unfinished);
        if (options.IsSqlite)
        {
            await VacuumAsync(options.ConnectionString, unfinished, cancellationToken);
        }
        else
        {
            await PostgreSqlTools.DumpAsync(options.Database, unfinished, cancellationToken);
        }

        File.Move(unfinished, target);
        return target;
    }

    /// <summary>Puts a backup in the place of the database. Nothing else may have it open. A SQLite file that was there is kept beside it.</summary>
    /// <returns>Path under which the old file is kept, or null.</returns>
    /// <exception cref="InvalidDataException">The backup is damaged; nothing was changed.</exception>
    public async Task<string?> RestoreAsync(Viewer viewer, string backup, CancellationToken cancellationToken = default)
    {
        RequireAdministrator(viewer);
        if (!options.IsSqlite)
        {
            NpgsqlConnection.ClearAllPools();
            await PostgreSqlTools.RestoreAsync(options.Database, backup, cancellationToken);
            return null;
        }

        await CheckAsync(backup, cancellationToken);
        SqliteConnection.ClearAllPools();
        var file = options.SqliteFile;
        var kept = File.Exists(file) ? $"{file}.before-{Utc.Now(clock).ToString("yyyyMMdd'T'HHmmssfff'Z'", CultureInfo.InvariantCulture)}" : null;
        foreach (var suffix in (string[])["", "-wal", "-shm"])
        {
            // The old log would be played into the restored file.
            if (kept is not null && File.Exists(file + suffix))
            {
                File.Move(file + suffix, kept + suffix);
            }
            else
            {
                File.Delete(file + suffix);
            }
        }

        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        await VacuumAsync(new SqliteConnectionStringBuilder { DataSource = backup, Pooling = false, Mode = SqliteOpenMode.ReadOnly }.ToString(), file, cancellationToken);
        return kept;
    }

    private static async Task VacuumAsync(string connectionString, string target, CancellationToken cancellationToken)
    {
        await using var connection = new SqliteConnection(new SqliteConnectionStringBuilder(connectionString) { Pooling = false }.ToString());
        await connection.OpenAsync(cancellationToken);
        await using var command = connection.CreateCommand();
        command.CommandText = "VACUUM INTO $target";
        command.Parameters.AddWithValue("$target", target);
        await command.ExecuteNonQueryAsync(cancellationToken);

        // The provider does not wait for the disk here; a backup that a power cut empties is none.
        await using var file = new FileStream(target, FileMode.Open, FileAccess.ReadWrite);
        file.Flush(flushToDisk: true);
    }

    private static async Task CheckAsync(string backup, CancellationToken cancellationToken)
    {
        await using var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = backup, Pooling = false, Mode = SqliteOpenMode.ReadOnly }.ToString());
        try
        {
            await connection.OpenAsync(cancellationToken);
            await using var command = connection.CreateCommand();
            command.CommandText = "PRAGMA integrity_check";
            if ((string?)await command.ExecuteScalarAsync(cancellationToken) != "ok")
            {
                throw new InvalidDataException("The backup is damaged.");
            }
        }
        catch (SqliteException exception)
        {
            throw new InvalidDataException("The backup cannot be read.", exception);
        }
    }

    private static void RequireAdministrator(Viewer viewer)
    {
        if (viewer.Role != Domain.Sites.PersonRole.Administrator || viewer.CustomerIds is not null)
        {
            throw new UnauthorizedAccessException("Only an administrator makes or restores backups.");
        }
    }
}
