using LogBook.Application.Data;

namespace LogBook.Application.Mail;

/// <summary>A page of the outbox.</summary>
/// <param name="Messages">At most <see cref="MailQuery.PageSize"/> messages, newest first.</param>
/// <param name="Total">How many fit the question.</param>
/// <param name="HasNext">Whether older ones follow.</param>
public sealed record MailPageOf(IReadOnlyList<MailEntry> Messages, ListCount Total, bool HasNext);
