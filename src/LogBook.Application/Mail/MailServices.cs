using LogBook.Application.Notices;
using LogBook.Application.Summaries;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;

namespace LogBook.Application.Mail;

/// <summary>Registers summaries and mail.</summary>
public static class MailServices
{
    /// <summary>Adds the summaries and the mail queue; <see cref="MailOptions"/> decide between SMTP and a folder.</summary>
    public static IServiceCollection AddLogBookMail(this IServiceCollection services, Action<MailOptions> configure, bool runs)
    {
        services.AddOptions<MailOptions>().Configure(configure)
            .Validate(mail => mail.Host.Length > 0 || mail.Folder.Length > 0, "Mail needs Mail:Host (an SMTP server) or Mail:Folder.")
            .Validate(mail => mail.Port is > 0 and < 65536, "Mail:Port is a number from 1 to 65535.")
            .Validate(mail => mail.Address.Length == 0 || (Uri.TryCreate(mail.Address, UriKind.Absolute, out var address) && address.Scheme is "https" or "http"), "Mail:Address is where people open LogBook, beginning with https://, or empty.")
            .Validate(mail => MimeKit.MailboxAddress.TryParse(mail.From, out _), "Mail:From is one mail address.")
            .ValidateOnStart();
        services.AddSingleton<SummaryReader>();
        services.AddSingleton<SmtpTransport>();
        services.AddSingleton<FolderTransport>();
        services.AddSingleton<IMailTransport>(provider => provider.GetRequiredService<IOptions<MailOptions>>().Value.Host.Length > 0
            ? provider.GetRequiredService<SmtpTransport>()
            : provider.GetRequiredService<FolderTransport>());
        services.AddSingleton<OutboxWorker>();
        services.AddSingleton<MailQuery>();
        if (runs)
        {
            services.AddHostedService<OutboxService>();
            services.AddHostedService<DigestService>();
        }

        return services;
    }
}
