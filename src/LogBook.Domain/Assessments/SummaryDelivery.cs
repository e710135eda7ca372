namespace LogBook.Domain.Assessments;

/// <summary>What is known of one message that carries the summary of a visit.</summary>
/// <param name="VisitId">The visit.</param>
/// <param name="VisitVersion">Version of the visit that it tells of.</param>
/// <param name="Handed">When it was handed to the queue, UTC.</param>
/// <param name="Accepted">When the mail server took it, UTC; null when it has not.</param>
/// <param name="Refused">When it came back or was given up, UTC; null when it was not.</param>
public sealed record SummaryDelivery(Guid VisitId, int VisitVersion, DateTime Handed, DateTime? Accepted, DateTime? Refused);
