using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace LogBook.Testing.Databases;

/// <summary>A private PostgreSQL server in a temporary folder on a free port, started once for a test run.</summary>
/// <remarks>
/// PostgreSQL refuses to run as root; then it runs as the user postgres. It ends with the test run, also when that is killed:
/// its guard waits for the end of its input.
/// </remarks>
public sealed class PostgresServer
{
    private static readonly Lazy<Task<PostgresServer>> Instance = new(StartAsync);
    private readonly int _port;

    private PostgresServer(int port) => _port = port;

    /// <summary>The server, running.</summary>
    public static Task<PostgresServer> RunningAsync() => Instance.Value;

    /// <summary>Connection to a database.</summary>
    public string ConnectionString(string database) => $"Host=127.0.0.1;Port={_port};Username=logbook;Database={database};Maximum Pool Size=20";

    /// <summary>Runs a statement for the whole server.</summary>
    public async Task ExecuteAsync(string sql)
    {
        await using var connection = new NpgsqlConnection(ConnectionString("postgres") + ";Pooling=false");
        await connection.OpenAsync();
        await using var command = connection.CreateCommand();
#pragma warning disable CA2100 // Names are made by the fixture.
        command.CommandText = sql;
#pragma warning restore CA2100
        await command.ExecuteNonQueryAsync();
    }

    private static async Task<PostgresServer> StartAsync()
    {
        var bin = Folders().FirstOrDefault(folder => File.Exists(Path.Combine(folder, "initdb")))
            ?? throw new InvalidOperationException("PostgreSQL is not installed: these tests need initdb on the path or in /usr/lib/postgresql.");
        var port = FreePort();
        var start = Environment.UserName == "root"
            ? new ProcessStartInfo("runuser") { ArgumentList = { "-u", "postgres", "--", "sh", "-c" } }
            : new ProcessStartInfo("sh") { ArgumentList = { "-c" } };
        start.ArgumentList.Add("""
            cd / && dir=$(mktemp -d) && "$1/initdb" -D "$dir/data" -U logbook -A trust -E UTF8 --locale=C >/dev/null || exit 1
            options="-p $2 -c listen_addresses=127.0.0.1 -c unix_socket_directories=$dir -c fsync=off -c full_page_writes=off"
            "$1/pg_ctl" -D "$dir/data" -w -t 60 -l "$dir/log" -o "$options" start >/dev/null || exit 1
            echo ready
            read -r _
            "$1/pg_ctl" -D "$dir/data" -m fast -w stop >/dev/null; rm -rf "$dir"
            """);
        start.ArgumentList.Add("guard");
        start.ArgumentList.Add(bin);
        start.ArgumentList.Add(port.ToString(System.Globalization.CultureInfo.InvariantCulture));
        start.RedirectStandardInput = true;
        start.RedirectStandardOutput = true;
        var guard = Process.Start(start) ?? throw new InvalidOperationException("No shell.");
        AppDomain.CurrentDomain.ProcessExit += (_, _) => guard.StandardInput.Close();
        using var limit = new CancellationTokenSource(TimeSpan.FromSeconds(60));
        return await guard.StandardOutput.ReadLineAsync(limit.Token) == "ready"
            ? new PostgresServer(port)
            : throw new InvalidOperationException("PostgreSQL did not start.");
    }

    private static IEnumerable<string> Folders() =>
    [
        .. (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries),
        .. Directory.Exists("/usr/lib/postgresql") ? Directory.GetDirectories("/usr/lib/postgresql").OrderDescending(StringComparer.Ordinal).Select(folder => Path.Combine(folder, "bin")) : [],
    ];

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
