using System.Net.Sockets;
using MailKit;
using MailKit.Net.Smtp;
using MailKit.Security;
using Microsoft.Extensions.Options;
using MimeKit;

namespace LogBook.Application.Mail;

/// <summary>Sends over SMTP, one connection a message: the round of a firm is small, and a stale connection is one fault less.</summary>
public sealed class SmtpTransport(IOptions<MailOptions> options) : IMailTransport
{
    public async Task<MailReceipt> SendAsync(MimeMessage message, CancellationToken cancellation)
    {
        var mail = options.Value;
        using var client = new SmtpClient { Timeout = mail.TimeoutSeconds * 1000 };
        try
        {
            await client.ConnectAsync(mail.Host, mail.Port, mail.RequireTls ? SecureSocketOptions.StartTls : SecureSocketOptions.StartTlsWhenAvailable, cancellation);
            if (!string.IsNullOrEmpty(mail.User))
            {
                await client.AuthenticateAsync(mail.User, mail.Password ?? string.Empty, cancellation);
            }

            var said = await client.SendAsync(message, cancellation);
            await LeaveAsync(client);
            return new MailReceipt(true, false, said);
        }
        catch (SmtpCommandException refusal)
        {
            // 4xx is "not now" by RFC 5321, 5xx is "never".
            return new MailReceipt(false, (int)refusal.StatusCode < 500, $"{(int)refusal.StatusCode} {refusal.Message}");
        }
        catch (Exception fault) when (IsOfTheConnection(fault) || fault is AuthenticationException or SslHandshakeException or ServiceNotAuthenticatedException or NotSupportedException)
        {
            // NotSupportedException: a server without STARTTLS or without a way to sign in. A person puts that right meanwhile.
            return new MailReceipt(false, true, fault.Message);
        }
    }

    private static async Task LeaveAsync(SmtpClient client)
    {
        try
        {
            await client.DisconnectAsync(true, CancellationToken.None);
        }
        catch (Exception fault) when (IsOfTheConnection(fault))
        {
            // The server has taken the message; that it does not say goodbye must not send it again.
        }
    }

    private static bool IsOfTheConnection(Exception fault) => fault is SmtpProtocolException or IOException or SocketException or TimeoutException;
}
