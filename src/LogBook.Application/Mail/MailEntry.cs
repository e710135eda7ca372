using LogBook.Domain.Languages;

namespace LogBook.Application.Mail;

/// <summary>A message of the outbox in a list.</summary>
/// <param name="Id">Key.</param>
/// <param name="VisitId">Visit it is about; null for a notice to the firm's own people.</param>
/// <param name="VisitVersion">Version of the visit.</param>
/// <param name="SiteCode">Code of the visit's site.</param>
/// <param name="SiteName">Name of the visit's site.</param>
/// <param name="TimeZone">Zone of the site; UTC for a notice.</param>
/// <param name="Recipient">Address.</param>
/// <param name="RecipientName">Name.</param>
/// <param name="Language">Language it is in.</param>
/// <param name="CreatedAt">When it was queued, UTC.</param>
/// <param name="DueAt">Not before, UTC.</param>
/// <param name="Attempts">Tries so far.</param>
/// <param name="AcceptedAt">When the mail server took it, UTC.</param>
/// <param name="GivenUpAt">When trying was given up, UTC.</param>
/// <param name="LastError">What went wrong last.</param>
/// <param name="Subject">Subject, once it was worded.</param>
public sealed record MailEntry(
    int Id,
    Guid? VisitId,
    int VisitVersion,
    string? SiteCode,
    string? SiteName,
    string TimeZone,
    string Recipient,
    string RecipientName,
    Language Language,
    DateTime CreatedAt,
    DateTime DueAt,
    int Attempts,
    DateTime? AcceptedAt,
    DateTime? GivenUpAt,
    string? LastError,
    string? Subject)
{
    /// <summary>Where it stands.</summary>
    public MailStanding Standing => AcceptedAt is not null ? MailStanding.Accepted : GivenUpAt is not null ? MailStanding.GivenUp : MailStanding.Waiting;
}
