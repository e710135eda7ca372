using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The line between a tablet and the server: passes on, is cut, or loses the server's answer after the server has done its work.</summary>
public sealed class Link : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly Uri _server;
    private readonly CancellationTokenSource _end = new();
    private readonly HashSet<Socket> _open = [];
    private readonly Random _random = new(20250331);
    private readonly Task _accepting;
    private volatile bool _isCut;
    private int _lost;

    /// <summary>Starts to listen.</summary>
    public Link(Uri server)
    {
        _server = server;
        _listener.Start();
        Address = new Uri($"http://127.0.0.1:{((IPEndPoint)_listener.LocalEndpoint).Port}");
        _accepting = AcceptAsync();
    }

    /// <summary>Address for the tablet.</summary>
    public Uri Address { get; }

    /// <summary>Share of the answers to handed-in visits and photos that are lost, 0 to 1.</summary>
    public double LosesAnswers { get; set; }

    /// <summary>Scripts that are answered here instead of by the server, by path.</summary>
    public ConcurrentDictionary<string, string> Scripts { get; } = new(StringComparer.Ordinal);

    /// <summary>Answers lost so far.</summary>
    public int Lost => Volatile.Read(ref _lost);

    /// <summary>No signal: open connections break, new ones are refused at once.</summary>
    public void Cut()
    {
        _isCut = true;
        lock (_open)
        {
            foreach (var socket in _open)
            {
                socket.Close();
            }
        }
    }

    /// <summary>The signal is back.</summary>
    public void Mend() => _isCut = false;

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _end.CancelAsync();
        _listener.Stop();
        Cut();
        await _accepting;
        _end.Dispose();
    }

    private async Task AcceptAsync()
    {
        try
        {
            while (!_end.IsCancellationRequested)
            {
                _ = RelayAsync(await _listener.AcceptSocketAsync(_end.Token));
            }
        }
        catch (Exception exception) when (exception is OperationCanceledException or SocketException or ObjectDisposedException)
        {
            // The test is over.
        }
    }

    private async Task RelayAsync(Socket tablet)
    {
        using var server = new Socket(SocketType.Stream, ProtocolType.Tcp);
        try
        {
            lock (_open)
            {
                _open.Add(tablet);
                _open.Add(server);
            }

            if (!_isCut)
            {
                await server.ConnectAsync(_server.Host, _server.Port);
                var state = new Relay();
                await Task.WhenAny(UpAsync(tablet, server, state), DownAsync(server, tablet, state));
            }
        }
        catch (Exception exception) when (exception is SocketException or ObjectDisposedException)
        {
            // Cut, or closed by one side.
        }
        finally
        {
            lock (_open)
            {
                _open.Remove(tablet);
                _open.Remove(server);
            }

            tablet.Dispose();
        }
    }

    private async Task UpAsync(Socket tablet, Socket server, Relay state)
    {
        var buffer = new byte[16 * 1024];
        int read;
        while ((read = await tablet.ReceiveAsync(buffer)) > 0)
        {
            var text = Encoding.Latin1.GetString(buffer, 0, read);
            if (text.StartsWith("GET ", StringComparison.Ordinal) && Scripts.TryGetValue(text.Split(' ', 3)[1], out var script))
            {
                await SendAsync(tablet, Encoding.UTF8.GetBytes($"HTTP/1.1 200 OK\r\nContent-Type: text/javascript\r\nCache-Control: no-cache\r\nContent-Length: {Encoding.UTF8.GetByteCount(script)}\r\n\r\n{script}"));
                continue;
            }

            if (text.StartsWith("POST /api/v1/visits", StringComparison.Ordinal) || text.StartsWith("POST /api/v1/photos", StringComparison.Ordinal))
            {
                lock (_random)
                {
                    state.LosesNext = _random.NextDouble() < LosesAnswers;
                }
            }

            await SendAsync(server, buffer.AsMemory(0, read));
        }
    }

    private async Task DownAsync(Socket server, Socket tablet, Relay state)
    {
        var buffer = new byte[64 * 1024];
        int read;
        while ((read = await server.ReceiveAsync(buffer)) > 0)
        {
            // The server has answered, so what it was asked for is done; nobody hears of it.
            if (state.LosesNext)
            {
                Interlocked.Increment(ref _lost);
                return;
            }

            await SendAsync(tablet, buffer.AsMemory(0, read));
        }
    }

    private static async Task SendAsync(Socket to, ReadOnlyMemory<byte> bytes)
    {
        while (bytes.Length > 0)
        {
            bytes = bytes[await to.SendAsync(bytes)..];
        }
    }

    private sealed class Relay
    {
        public volatile bool LosesNext;
    }
}
