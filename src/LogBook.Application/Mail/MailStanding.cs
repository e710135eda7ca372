namespace LogBook.Application.Mail;

/// <summary>Where a message stands.</summary>
public enum MailStanding
{
    /// <summary>Not yet with the mail server.</summary>
    Waiting,

    /// <summary>The mail server took it; whether anybody reads it is unknown.</summary>
    Accepted,

    /// <summary>Not tried any more until a person says so.</summary>
    GivenUp,
}
