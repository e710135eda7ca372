using System.Diagnostics;
using Npgsql;

namespace LogBook.Application.Backups;

/// <summary>Runs the server's own programs; the password goes through the environment, never through the arguments.</summary>
internal static class PostgreSqlTools
{
    public static Task DumpAsync(string connectionString, string target, CancellationToken cancellationToken) =>
        RunAsync("pg_dump", connectionString, ["--format=custom", "--no-owner", "--file=" + target], cancellationToken);

    public static Task RestoreAsync(string connectionString, string backup, CancellationToken cancellationToken) =>
        RunAsync("pg_restore", connectionString, ["--clean", "--if-exists", "--no-owner", "--single-transaction", "--exit-on-error", backup], cancellationToken);

    private static async Task RunAsync(string program, string connectionString, string[] arguments, CancellationToken cancellationToken)
    {
        var connection = new NpgsqlConnectionStringBuilder(connectionString);
        var start = new ProcessStartInfo(Find(program)) { RedirectStandardError = true, UseShellExecute = false };
        start.ArgumentList.Add("--host=" + connection.Host);
        start.ArgumentList.Add("--port=" + connection.Port.ToString(System.Globalization.CultureInfo.InvariantCulture));
        start.ArgumentList.Add("--username=" + connection.Username);
        start.ArgumentList.Add("--dbname=" + connection.Database);
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }

        start.Environment["PGPASSWORD"] = connection.Password ?? "";
        using var process = Process.Start(start) ?? throw new InvalidOperationException($"{program} did not start.");
        var said = await process.StandardError.ReadToEndAsync(cancellationToken);
        await process.WaitForExitAsync(cancellationToken);
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} ended with {process.ExitCode}: {said.Trim()}");
        }
    }

    // On the path, or where Debian puts them, the newest first.
    private static string Find(string program)
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        var debian = Directory.Exists("/usr/lib/postgresql")
            ? Directory.GetDirectories("/usr/lib/postgresql").OrderByDescending(folder => int.TryParse(Path.GetFileName(folder), out var number) ? number : 0).Select(folder => Path.Combine(folder, "bin"))
            : [];
        return folders.Concat(debian).Select(folder => Path.Combine(folder, program)).FirstOrDefault(File.Exists)
            ?? throw new InvalidOperationException($"{program} was not found: install the PostgreSQL client programs.");
    }
}
