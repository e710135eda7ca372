using LogBook.Application.Data;
using Microsoft.Data.Sqlite;

namespace LogBook.Testing.Databases;

/// <summary>A real SQLite file in a folder of its own (WAL needs a file).</summary>
public sealed class SqliteDatabase : TestDatabase
{
    private readonly string _folder = Directory.CreateTempSubdirectory("logbook-test-").FullName;

    /// <inheritdoc />
    public override LogBookOptions Options => new() { Database = File, BackupFolder = Path.Combine(_folder, "backups") };

    /// <summary>Path of the file.</summary>
    public string File => Path.Combine(_folder, "logbook.db");

    /// <summary>Folder that is deleted afterwards.</summary>
    public string Folder => _folder;

    /// <inheritdoc />
    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(_folder, recursive: true);
    }
}
