namespace LogBook.Application.Data;

/// <summary>What is to stand in the audit trail; who and when are added by the store.</summary>
/// <param name="What">What was done: see <see cref="LogBook.Application.Audit.AuditActs"/>.</param>
/// <param name="Entity">Kind of record.</param>
/// <param name="Key">Key as people know it.</param>
/// <param name="CustomerId">Customer it belongs to, or null for the firm.</param>
/// <param name="Old">Value before.</param>
/// <param name="New">Value after.</param>
/// <param name="Why">Reason given.</param>
/// <param name="DeviceAt">When, by the device's clock.</param>
public sealed record AuditEntry(
    string What,
    string Entity,
    string Key,
    int? CustomerId = null,
    string? Old = null,
    string? New = null,
    string? Why = null,
    DateTime? DeviceAt = null);
