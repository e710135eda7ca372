namespace LogBook.Application.Mail;

/// <summary>A page of the outbox.</summary>
/// <param name="Messages">At most <see cref="MailQuery.PageSize"/> messages, newest first.</param>
/// <param name="Total">All that fit the question.</param>
public sealed record MailPageOf(IReadOnlyList<MailEntry> Messages, int Total);
