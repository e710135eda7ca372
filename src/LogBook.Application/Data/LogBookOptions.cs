namespace LogBook.Application.Data;

/// <summary>Where an installation keeps its records.</summary>
public sealed class LogBookOptions
{
    /// <summary>Path of a SQLite file, or a connection string: one with "Host=" is PostgreSQL, one with "Data Source=" SQLite.</summary>
    public required string Database { get; set; }

    /// <summary>Where automatic backups go; beside the database file when null.</summary>
    public string? BackupFolder { get; set; }

    /// <summary>Right-hand side of Message-IDs.</summary>
    public string MailDomain { get; set; } = "logbook.example";

    /// <summary>Whether <see cref="Database"/> is a PostgreSQL connection.</summary>
    public bool IsPostgreSql => Database.Contains("Host=", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether the records are in a SQLite file.</summary>
    public bool IsSqlite => !IsPostgreSql;

    /// <summary>Path of the SQLite file.</summary>
    internal string SqliteFile => Path.GetFullPath(new Microsoft.Data.Sqlite.SqliteConnectionStringBuilder(ConnectionString).DataSource);

    /// <summary>Where a server keeps pictures unless it was told otherwise; null where the records are in no file.</summary>
    public string? PhotoFolderBeside => IsSqlite ? Path.Combine(Path.GetDirectoryName(SqliteFile)!, "photos") : null;

    internal string BackupFolderOrDefault => BackupFolder
        ?? (IsSqlite ? Path.Combine(Path.GetDirectoryName(SqliteFile)!, "backups") : Path.Combine(AppContext.BaseDirectory, "backups"));

    /// <summary>Connection string for the provider.</summary>
    internal string ConnectionString => IsPostgreSql ? Database : new Microsoft.Data.Sqlite.SqliteConnectionStringBuilder(
        Database.Contains('=', StringComparison.Ordinal) ? Database : new Microsoft.Data.Sqlite.SqliteConnectionStringBuilder { DataSource = Database }.ToString())
    {
        ForeignKeys = true,
    }.ToString();
}
