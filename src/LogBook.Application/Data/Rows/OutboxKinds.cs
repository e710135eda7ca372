namespace LogBook.Application.Data;

/// <summary>Kinds of messages in the outbox.</summary>
public static class OutboxKinds
{
    /// <summary>The visit summary to a contact of the customer.</summary>
    public const string VisitSummary = "visit-summary";

    /// <summary>An urgent finding, to a person of the firm who asked to be told at once.</summary>
    public const string AtOnce = "at-once";

    /// <summary>What the day brings, to a person of the firm who asked for it.</summary>
    public const string Digest = "digest";
}
