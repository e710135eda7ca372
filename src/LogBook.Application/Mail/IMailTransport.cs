using MimeKit;

namespace LogBook.Application.Mail;

/// <summary>Where mail goes: an SMTP server, or a folder that the application shows.</summary>
public interface IMailTransport
{
    /// <summary>Hands one message over.</summary>
    /// <param name="message">Finished message with its Message-ID.</param>
    /// <param name="cancellation">Stops waiting.</param>
    /// <returns>What became of it.</returns>
    Task<MailReceipt> SendAsync(MimeMessage message, CancellationToken cancellation);
}
