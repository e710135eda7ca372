namespace LogBook.Application.Mail;

/// <summary>How mail leaves.</summary>
public sealed class MailOptions
{
    /// <summary>SMTP host; empty keeps mail in <see cref="Folder"/> only.</summary>
    public string Host { get; set; } = string.Empty;

    public int Port { get; set; } = 587;

    public string? User { get; set; }

    public string? Password { get; set; }

    /// <summary>Whether the connection must be encrypted; only a server on the same machine may do without.</summary>
    public bool RequireTls { get; set; } = true;

    /// <summary>Address that mail comes from.</summary>
    public string From { get; set; } = "logbook@quernwath.example";

    public string FromName { get; set; } = "LogBook";

    /// <summary>Folder in which mail is kept when there is no host.</summary>
    public string Folder { get; set; } = string.Empty;

    /// <summary>Where people open LogBook, for the links in notices ("https://logbook.example.org"); empty leaves the links out.</summary>
    public string Address { get; set; } = string.Empty;

    /// <summary>Seconds after which a server that does not answer counts as failed.</summary>
    public int TimeoutSeconds { get; set; } = 60;
}
