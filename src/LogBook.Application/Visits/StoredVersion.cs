namespace LogBook.Application.Visits;

/// <summary>One version of a visit, without its document.</summary>
public sealed record StoredVersion(int Version, string Sha256, DateTime ReceivedAt, IntakeSource Source, string Who, string? Reason);
