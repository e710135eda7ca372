using LogBook.Application.Visits;

namespace LogBook.Application.Data;

/// <summary>One version of a visit, as it is kept for ever.</summary>
public sealed class VisitVersionRow : ICustomerOwned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int VisitRowId { get; set; }

    public int Version { get; set; }

    /// <summary>Canonical text of the visit (RFC 8785).</summary>
    public string Document { get; set; } = "";

    /// <summary>SHA-256 of the canonical text, lower-case hexadecimal.</summary>
    public string Sha256 { get; set; } = "";

    public DateTime ReceivedAt { get; set; }

    public IntakeSource Source { get; set; }

    public string Who { get; set; } = "";

    public string? Reason { get; set; }
}
