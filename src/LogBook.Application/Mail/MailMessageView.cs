namespace LogBook.Application.Mail;

/// <summary>A message with its words.</summary>
/// <param name="Entry">Where it stands.</param>
/// <param name="MessageId">Message-ID without angle brackets.</param>
/// <param name="TextBody">Plain part, once it was worded.</param>
/// <param name="HtmlBody">HTML part, once it was worded.</param>
/// <param name="ServerSaid">Words of the mail server.</param>
public sealed record MailMessageView(MailEntry Entry, string MessageId, string? TextBody, string? HtmlBody, string? ServerSaid);
