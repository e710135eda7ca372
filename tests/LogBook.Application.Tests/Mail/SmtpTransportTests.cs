using System.Buffers;
using System.Net;
using System.Net.Sockets;
using LogBook.Testing;
using MimeKit;
using SmtpServer;
using SmtpServer.ComponentModel;
using SmtpServer.Protocol;
using SmtpServer.Storage;

namespace LogBook.Application.Tests.Mail;

/// <summary>Against a whole mail server, not ours, on the loopback.</summary>
public sealed class SmtpTransportTests
{
    [Fact]
    [Trait("goal", "R6")]
    public async Task SendDue_RealServer_DeliversBothPartsAndTheHeaders()
    {
        await using var house = await MailHouse.StartAsync();
        await house.ReceiveAsync(SampleFirm.Visit("PLU-1"));
        var port = FreePort();
        var store = new KeepingStore();
        var provider = new ServiceProvider();
        provider.Add(store);
        var server = new SmtpServer.SmtpServer(
            new SmtpServerOptionsBuilder().ServerName("mail.quernwath.example").Endpoint(endpoint => endpoint.Endpoint(new IPEndPoint(IPAddress.Loopback, port))).Build(), provider);
        using var stop = new CancellationTokenSource();
        var running = server.StartAsync(stop.Token);

        Assert.Equal(1, await house.Worker(MailHouse.Smtp(port)).SendDueAsync());

        var row = await house.OnlyAsync();
        var (from, to, message) = Assert.Single(store.Kept);
        Assert.Equal("service@quernwath.example", from);
        Assert.Equal("maintenance@pludworth.example", to);
        Assert.Equal(("Quernwath Water", "service@quernwath.example"), (message.From.Mailboxes.Single().Name, message.From.Mailboxes.Single().Address));
        Assert.Equal(("Maintenance", "maintenance@pludworth.example"), (message.To.Mailboxes.Single().Name, message.To.Mailboxes.Single().Address));
        Assert.Equal(row.MessageId, message.MessageId);
        Assert.Equal("auto-generated", message.Headers["Auto-Submitted"]);
        Assert.Equal(row.Subject, message.Subject);
        Assert.StartsWith("Resumen de la visita: Pludworth Mouldings", message.Subject, StringComparison.Ordinal);
        Assert.Equal(new DateTimeOffset(2025, 3, 10, 8, 0, 0, TimeSpan.Zero), message.Date);
        Assert.Equal(row.TextBody!.ReplaceLineEndings(), message.TextBody!.ReplaceLineEndings());
        Assert.Equal(row.HtmlBody!.ReplaceLineEndings(), message.HtmlBody!.ReplaceLineEndings());
        Assert.IsType<MultipartAlternative>(message.Body);

        await stop.CancelAsync();
        await running;
    }

    private static int FreePort()
    {
        var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        var port = ((IPEndPoint)listener.LocalEndpoint).Port;
        listener.Stop();
        return port;
    }

    private sealed class KeepingStore : MessageStore
    {
        public List<(string From, string To, MimeMessage Message)> Kept { get; } = [];

        public override async Task<SmtpResponse> SaveAsync(ISessionContext context, IMessageTransaction transaction, ReadOnlySequence<byte> buffer, CancellationToken cancellationToken)
        {
            var message = await MimeMessage.LoadAsync(new MemoryStream(buffer.ToArray()), cancellationToken);
            var (from, to) = (transaction.From, Assert.Single(transaction.To));
            Kept.Add(($"{from.User}@{from.Host}", $"{to.User}@{to.Host}", message));
            return SmtpResponse.Ok;
        }
    }
}
