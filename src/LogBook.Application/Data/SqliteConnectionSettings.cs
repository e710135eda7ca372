using System.Data.Common;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace LogBook.Application.Data;

/// <summary>Settings that SQLite forgets with each connection.</summary>
/// <remarks>
/// WAL: readers do not wait for the writer. FULL: an acknowledged visit survives a power cut; NORMAL would lose the last ones
/// and saves about 0.4 ms. Foreign keys are off unless asked for.
/// </remarks>
internal sealed class SqliteConnectionSettings : DbConnectionInterceptor
{
    private const string ForWriters = "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON;";
    private const string ForReaders = "PRAGMA foreign_keys=ON;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Apply(connection);

    public override Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        Apply(connection);
        return Task.CompletedTask;
    }

    private static void Apply(DbConnection connection)
    {
        if (connection is SqliteConnection)
        {
            using var command = connection.CreateCommand();

            // Whether a database exists is asked over a connection that may not write, also not its journal mode.
            command.CommandText = new SqliteConnectionStringBuilder(connection.ConnectionString).Mode == SqliteOpenMode.ReadOnly ? ForReaders : ForWriters;
            command.ExecuteNonQuery();
        }
    }
}
