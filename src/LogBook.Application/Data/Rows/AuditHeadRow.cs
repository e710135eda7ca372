namespace LogBook.Application.Data;

/// <summary>Where the audit chain ends: without it, cut-off last rows would not be missed. One row.</summary>
public sealed class AuditHeadRow
{
    public int Id { get; set; }

    public long Count { get; set; }

    public string Hash { get; set; } = "";
}
