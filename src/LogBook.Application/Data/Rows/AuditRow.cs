namespace LogBook.Application.Data;

/// <summary>One entry of the audit trail. Rows are chained by their hashes; the database refuses to change or delete them.</summary>
public sealed class AuditRow : ICustomerMayOwn
{
    /// <summary>Counts from 1 without gaps.</summary>
    public long Id { get; set; }

    /// <summary>When, by the server's clock.</summary>
    public DateTime At { get; set; }

    /// <summary>When, by the device's clock, for what was done offline.</summary>
    public DateTime? DeviceAt { get; set; }

    public string Who { get; set; } = "";

    public int? UserId { get; set; }

    /// <summary>What was done: see <see cref="LogBook.Application.Audit.AuditActs"/>.</summary>
    public string What { get; set; } = "";

    /// <summary>Kind of record.</summary>
    public string Entity { get; set; } = "";

    /// <summary>Key of the record as people know it: a code or the visit's identity.</summary>
    public string Key { get; set; } = "";

    public int? CustomerId { get; set; }

    public string? Old { get; set; }

    public string? New { get; set; }

    public string? Why { get; set; }

    /// <summary>Hash of the row before.</summary>
    public string Previous { get; set; } = "";

    /// <summary>SHA-256 over every field above.</summary>
    public string Hash { get; set; } = "";
}
