using LogBook.Application.Mail;
using MimeKit;

namespace LogBook.Application.Tests.Mail;

/// <summary>The program is stopped between the server's answer and the note of it.</summary>
internal sealed class StoppedAfterSending(IMailTransport transport, CancellationTokenSource stop) : IMailTransport
{
    public async Task<MailReceipt> SendAsync(MimeMessage message, CancellationToken cancellation)
    {
        await transport.SendAsync(message, CancellationToken.None);
        await stop.CancelAsync();
        throw new OperationCanceledException(stop.Token);
    }
}
