namespace LogBook.Application.Data;

/// <summary>Kinds of messages in the outbox.</summary>
public static class OutboxKinds
{
    /// <summary>The visit summary to a contact of the customer.</summary>
    public const string VisitSummary = "visit-summary";
}
