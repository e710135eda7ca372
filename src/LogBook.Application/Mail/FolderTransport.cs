using Microsoft.Extensions.Options;
using MimeKit;

namespace LogBook.Application.Mail;

/// <summary>Keeps each message as a file: for the demo, and for a firm that has not set up mail yet.</summary>
public sealed class FolderTransport(IOptions<MailOptions> options) : IMailTransport
{
    public async Task<MailReceipt> SendAsync(MimeMessage message, CancellationToken cancellation)
    {
        var folder = options.Value.Folder;
        Directory.CreateDirectory(folder);
        var name = string.Concat((message.MessageId ?? throw new ArgumentException("The message has no Message-ID.", nameof(message))).Split('@')[0].Where(c => char.IsAsciiLetterOrDigit(c) || c == '-')) + ".eml";
        var path = Path.Combine(folder, name);
        var half = path + ".part";
        await using (var file = new FileStream(half, FileMode.Create, FileAccess.Write))
        {
            await message.WriteToAsync(file, cancellation);
            file.Flush(flushToDisk: true);
        }

        File.Move(half, path, overwrite: true);
        return new MailReceipt(true, false, name);
    }
}
