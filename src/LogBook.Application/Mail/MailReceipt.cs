namespace LogBook.Application.Mail;

/// <summary>What became of a message.</summary>
/// <param name="Accepted">Whether the other side took responsibility for it.</param>
/// <param name="CanRetry">Whether trying again makes sense.</param>
/// <param name="ServerSaid">Its words, or ours where it said nothing.</param>
public sealed record MailReceipt(bool Accepted, bool CanRetry, string ServerSaid);
