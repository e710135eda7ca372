using System.Collections.Concurrent;
using System.Net;
using System.Net.Sockets;
using System.Text;
using MimeKit;

namespace LogBook.Application.Tests.Mail;

/// <summary>A mail server on the loopback that misbehaves as told, one answer a connection; after the last one it accepts.</summary>
internal sealed class SmtpSink : IAsyncDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly CancellationTokenSource _stop = new();
    private readonly ConcurrentQueue<SinkAnswer> _answers;
    private readonly ConcurrentQueue<byte[]> _kept = new();
    private readonly ConcurrentBag<Task> _talks = [];
    private readonly Task _accepting;
    private int _connections;

    public SmtpSink(params SinkAnswer[] answers)
    {
        _answers = new ConcurrentQueue<SinkAnswer>(answers);
        _listener.Start();
        _accepting = AcceptAsync();
    }

    public int Port => ((IPEndPoint)_listener.LocalEndpoint).Port;

    /// <summary>Connections so far.</summary>
    public int Connections => Volatile.Read(ref _connections);

    /// <summary>Recipients as the envelope named them, in order.</summary>
    public ConcurrentQueue<string> Recipients { get; } = new();

    /// <summary>Messages that a mailbox would hold: those whose final dot arrived.</summary>
    public IReadOnlyList<MimeMessage> Kept => [.. _kept.Select(bytes => MimeMessage.Load(new MemoryStream(bytes)))];

    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync();
        _listener.Stop();
        await _accepting;
        await Task.WhenAll(_talks);
        _stop.Dispose();
    }

    private async Task AcceptAsync()
    {
        try
        {
            while (true)
            {
                var client = await _listener.AcceptTcpClientAsync(_stop.Token);
                Interlocked.Increment(ref _connections);
                _talks.Add(TalkAsync(client, _answers.TryDequeue(out var answer) ? answer : SinkAnswer.Accept));
            }
        }
        catch (OperationCanceledException)
        {
            // The test is over.
        }
    }

    private async Task TalkAsync(TcpClient client, SinkAnswer answer)
    {
        try
        {
            using (client)
            {
                await TalkAsync(client.GetStream(), answer);
            }
        }
        catch (Exception fault) when (fault is IOException or OperationCanceledException)
        {
            // The other side left, or the test is over.
        }
    }

    private async Task TalkAsync(NetworkStream stream, SinkAnswer answer)
    {
        using var reader = new StreamReader(stream, Encoding.Latin1);
        async Task Say(string line) => await stream.WriteAsync(Encoding.ASCII.GetBytes(line + "\r\n"), _stop.Token);
        if (answer == SinkAnswer.Silent)
        {
            await Task.Delay(Timeout.InfiniteTimeSpan, _stop.Token);
        }

        if (answer == SinkAnswer.Closed)
        {
            await Say("421 sink.example closed for a while");
            return;
        }

        await Say("220 sink.example ESMTP");
        while (await reader.ReadLineAsync(_stop.Token) is { } line)
        {
            switch (line.Split(' ')[0].ToUpperInvariant())
            {
                case "EHLO":
                    await Say("250-sink.example");
                    await Say("250 8BITMIME");
                    break;
                case "MAIL" when answer == SinkAnswer.WantsSignIn:
                    await Say("530 5.7.0 Authentication required");
                    break;
                case "RCPT" when answer == SinkAnswer.Never:
                    await Say("550 5.1.1 no such mailbox");
                    break;
                case "RCPT":
                    Recipients.Enqueue(line);
                    await Say("250 OK");
                    break;
                case "DATA":
                    await Say("354 go on");
                    if (!await TakeAsync(reader, answer, Say))
                    {
                        return;
                    }

                    break;
                case "QUIT" when answer == SinkAnswer.SilentAtQuit:
                    await Task.Delay(Timeout.InfiniteTimeSpan, _stop.Token);
                    break;
                case "QUIT":
                    await Say("221 bye");
                    return;
                default:
                    await Say("250 OK");
                    break;
            }
        }
    }

    private async Task<bool> TakeAsync(StreamReader reader, SinkAnswer answer, Func<string, Task> say)
    {
        var message = new StringBuilder();
        while (await reader.ReadLineAsync(_stop.Token) is { } line && line != ".")
        {
            if (answer == SinkAnswer.DropBeforeDot && message.Length > 200)
            {
                return false;
            }

            message.Append(line.StartsWith('.') ? line[1..] : line).Append("\r\n");
        }

        if (answer == SinkAnswer.NotNow)
        {
            await say("451 4.3.0 try again later");
            return true;
        }

        _kept.Enqueue(Encoding.Latin1.GetBytes(message.ToString()));
        switch (answer)
        {
            case SinkAnswer.DropAfterDot:
                return false;
            case SinkAnswer.SilentAfterDot:
                await Task.Delay(Timeout.InfiniteTimeSpan, _stop.Token);
                return false;
            default:
                await say("250 2.0.0 queued as 42");
                return true;
        }
    }
}
