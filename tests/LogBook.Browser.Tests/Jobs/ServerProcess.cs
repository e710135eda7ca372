using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using LogBook.Browser.Tests.Capture;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>The host as a process of its own on a data folder, so that it can be ended as a service manager ends it.</summary>
public sealed class ServerProcess : IAsyncDisposable
{
    private static readonly TimeSpan Longest = TimeSpan.FromMinutes(2);
    private readonly string _folder;
    private Process? _process;

    /// <summary>Prepares a host; it does not run yet.</summary>
    /// <param name="folder">Folder with the database.</param>
    public ServerProcess(string folder)
    {
        _folder = folder;
        using var free = new TcpListener(IPAddress.Loopback, 0);
        free.Start();
        Address = new Uri($"http://127.0.0.1:{((IPEndPoint)free.LocalEndpoint).Port}");
    }

    // LOGBOOK_PUBLISHED takes the program that a firm has instead of that of the last build.
    private static string Program => PublishedCapture.Folder is { } folder ? Path.GetFullPath(Path.Combine(folder, "web")) : AppContext.BaseDirectory;

    /// <summary>Where it listens each time it is started.</summary>
    public Uri Address { get; }

    /// <summary>Starts it and waits until it is ready.</summary>
    public async Task StartAsync()
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = _folder,
            ArgumentList = { Path.Combine(Program, "LogBook.Web.dll"), "--urls", Address.ToString(), "--data", _folder },
        };

        // Before publishing, the files for browsers lie in their projects, where only this environment looks for them.
        start.Environment["ASPNETCORE_ENVIRONMENT"] = PublishedCapture.Folder is null ? "Development" : "Production";
        start.Environment["Logging__LogLevel__Default"] = "Warning";
        _process = Process.Start(start)!;
        using var client = new HttpClient { BaseAddress = Address };
        using var within = new CancellationTokenSource(Longest);
        using var timer = new PeriodicTimer(TimeSpan.FromMilliseconds(100));
        while (!await IsReadyAsync(client, within.Token))
        {
            Assert.False(_process.HasExited, "The server ended before it was ready.");
            await timer.WaitForNextTickAsync(within.Token);
        }
    }

    /// <summary>Asks it to end, and waits until it has.</summary>
    /// <returns>How long it took.</returns>
    public async Task<TimeSpan> TerminateAsync()
    {
        var asked = Stopwatch.GetTimestamp();
        using (var kill = Process.Start("kill", ["-TERM", $"{_process!.Id}"]))
        {
            await kill.WaitForExitAsync();
            Assert.Equal(0, kill.ExitCode);
        }

        using var within = new CancellationTokenSource(Longest);
        await _process.WaitForExitAsync(within.Token);
        return Stopwatch.GetElapsedTime(asked);
    }

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        if (_process is { HasExited: false })
        {
            _process.Kill();
            await _process.WaitForExitAsync();
        }

        _process?.Dispose();
    }

    private static async Task<bool> IsReadyAsync(HttpClient client, CancellationToken cancellationToken)
    {
        try
        {
            using var answer = await client.GetAsync("/health/ready", cancellationToken);
            return answer.IsSuccessStatusCode;
        }
        catch (HttpRequestException)
        {
            return false;
        }
    }
}
