using Microsoft.Data.Sqlite;

namespace LogBook.Benchmarks;

/// <summary>The raw limit of a save: the very same rows, by plain statements, in one transaction.</summary>
/// <remarks>Rows are read from our database before the clock starts. Both files have the same schema, triggers and settings.</remarks>
internal sealed class RowCopy : IDisposable
{
    // Parents before children.
    private static readonly string[] Tables = ["Visits", "VisitVersions", "Readings", "Outbox", "AuditTrail"];

    private readonly SqliteConnection _from;
    private readonly SqliteConnection _to;
    private readonly Dictionary<string, long> _seen = [];

    public RowCopy(string from, string to)
    {
        _from = Open(from);
        _to = Open(to);
        foreach (var table in Tables)
        {
            _seen[table] = Newest(table);
        }
    }

    /// <summary>What a save of ours added since the last call, as statements ready to run.</summary>
    public IReadOnlyList<SqliteCommand> NewRows()
    {
        var inserts = new List<SqliteCommand>();
        foreach (var table in Tables)
        {
            using var select = _from.CreateCommand();
            select.CommandText = $"SELECT rowid, * FROM \"{table}\" WHERE rowid > $seen ORDER BY rowid";
            select.Parameters.AddWithValue("$seen", _seen[table]);
            using var reader = select.ExecuteReader();
            SqliteCommand? insert = null;
            while (reader.Read())
            {
                _seen[table] = reader.GetInt64(0);
                insert = _to.CreateCommand();
                insert.CommandText = $"INSERT INTO \"{table}\" VALUES ({string.Join(", ", Enumerable.Range(1, reader.FieldCount - 1).Select(i => "$" + i))})";
                for (var i = 1; i < reader.FieldCount; i++)
                {
                    insert.Parameters.AddWithValue("$" + i, reader.GetValue(i));
                }

                inserts.Add(insert);
            }
        }

        return inserts;
    }

    /// <summary>Writes them.</summary>
    public void Write(IReadOnlyList<SqliteCommand> inserts)
    {
        using var transaction = _to.BeginTransaction();
        foreach (var insert in inserts)
        {
            insert.Transaction = transaction;
            insert.ExecuteNonQuery();
        }

        transaction.Commit();
    }

    public void Dispose()
    {
        _from.Dispose();
        _to.Dispose();
    }

    private static SqliteConnection Open(string file)
    {
        var connection = new SqliteConnection(new SqliteConnectionStringBuilder { DataSource = file, Pooling = false, ForeignKeys = true }.ToString());
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL;";
        command.ExecuteNonQuery();
        return connection;
    }

    private long Newest(string table)
    {
        using var command = _from.CreateCommand();
        command.CommandText = $"SELECT coalesce(max(rowid), 0) FROM \"{table}\"";
        return (long)command.ExecuteScalar()!;
    }
}
