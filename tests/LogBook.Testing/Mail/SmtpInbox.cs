using System.Buffers;
using System.Net;
using System.Net.Sockets;
using MimeKit;
using SmtpServer;
using SmtpServer.ComponentModel;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace LogBook.Testing.Mail;

/// <summary>A mail server on this machine that keeps what it is given.</summary>
public sealed class SmtpInbox : IAsyncDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly Task _running;
    private readonly Store _store = new();

    /// <summary>Starts the server on a free port.</summary>
    public SmtpInbox()
    {
        Port = FreePort();
        var options = new SmtpServerOptionsBuilder().ServerName("localhost")
            .Endpoint(endpoint => endpoint.Endpoint(new IPEndPoint(IPAddress.Loopback, Port)))
            .Build();
        var services = new ServiceProvider();
        services.Add(_store);
        _running = new SmtpServer.SmtpServer(options, services).StartAsync(_stop.Token);
    }

    /// <summary>Port on the loopback address.</summary>
    public int Port { get; }

    /// <summary>Settings with which a host sends here.</summary>
    public IReadOnlyDictionary<string, string> Settings => new Dictionary<string, string>
    {
        ["Mail:Host"] = "127.0.0.1",
        ["Mail:Port"] = Port.ToString(System.Globalization.CultureInfo.InvariantCulture),
        ["Mail:RequireTls"] = "false",
    };

    /// <summary>Waits for a message; those before it stay.</summary>
    /// <param name="which">The message waited for.</param>
    /// <param name="longest">After this the wait fails.</param>
    public Task<MimeMessage> NextAsync(Func<MimeMessage, bool> which, TimeSpan longest) => _store.WaitAsync(which).WaitAsync(longest);

    /// <summary>Everything that came, oldest first.</summary>
    public IReadOnlyList<MimeMessage> Messages => _store.All();

    /// <inheritdoc />
    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        await _running.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing);
        _stop.Dispose();
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private sealed class Store : MessageStore
    {
        private readonly Lock _gate = new();
        private readonly List<MimeMessage> _messages = [];
        private readonly List<(Func<MimeMessage, bool> Which, TaskCompletionSource<MimeMessage> Came)> _waiting = [];

        public IReadOnlyList<MimeMessage> All()
        {
            lock (_gate)
            {
                return [.. _messages];
            }
        }

        public Task<MimeMessage> WaitAsync(Func<MimeMessage, bool> which)
        {
            lock (_gate)
            {
                if (_messages.Find(message => which(message)) is { } here)
                {
                    return Task.FromResult(here);
                }

                var came = new TaskCompletionSource<MimeMessage>(TaskCreationOptions.RunContinuationsAsynchronously);
                _waiting.Add((which, came));
                return came.Task;
            }
        }

        public override async Task<SmtpResponse> SaveAsync(ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
        {
            await using var bytes = new MemoryStream(buffer.ToArray());
            var message = await MimeMessage.LoadAsync(bytes, cancellationToken);
            lock (_gate)
            {
                _messages.Add(message);
                foreach (var (_, came) in _waiting.Where(wait => wait.Which(message)))
                {
                    came.TrySetResult(message);
                }
            }

            return SmtpResponse.Ok;
        }
    }
}
