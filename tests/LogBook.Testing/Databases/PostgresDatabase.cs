using LogBook.Application.Data;
using Npgsql;

namespace LogBook.Testing.Databases;

/// <summary>A database of its own on the private PostgreSQL server of the test run.</summary>
public sealed class PostgresDatabase : TestDatabase
{
    private readonly string _name = $"t{Guid.CreateVersion7():N}";
    private readonly string _folder = Directory.CreateTempSubdirectory("logbook-test-").FullName;
    private string? _connection;

    /// <inheritdoc />
    public override LogBookOptions Options => new()
    {
        Database = _connection ?? throw new InvalidOperationException("Not started."),
        BackupFolder = Path.Combine(_folder, "backups"),
    };

    /// <summary>Folder that is deleted afterwards.</summary>
    public string Folder => _folder;

    /// <inheritdoc />
    public override async Task StartAsync()
    {
        if (_connection is null)
        {
            var server = await PostgresServer.RunningAsync();
            await server.ExecuteAsync($"CREATE DATABASE {_name}");
            _connection = server.ConnectionString(_name);
        }

        await base.StartAsync();
    }

    /// <inheritdoc />
    public override async ValueTask DisposeAsync()
    {
        await base.DisposeAsync();
        NpgsqlConnection.ClearAllPools();
        if (_connection is not null)
        {
            await (await PostgresServer.RunningAsync()).ExecuteAsync($"DROP DATABASE {_name} WITH (FORCE)");
        }

        Directory.Delete(_folder, recursive: true);
    }
}
