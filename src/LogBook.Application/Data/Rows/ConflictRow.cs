using LogBook.Application.Visits;

namespace LogBook.Application.Data;

/// <summary>A document that came under an identity that is taken by another content; kept for a person to settle.</summary>
public sealed class ConflictRow : ICustomerOwned, IVersioned
{
    public int Id { get; set; }

    public int CustomerId { get; set; }

    public int VisitRowId { get; set; }

    public Guid VisitId { get; set; }

    /// <summary>Version that the refused document claims.</summary>
    public int VisitVersion { get; set; }

    public string Document { get; set; } = "";

    public string Sha256 { get; set; } = "";

    public DateTime ReceivedAt { get; set; }

    public IntakeSource Source { get; set; }

    public string Who { get; set; } = "";

    public DateTime? SettledAt { get; set; }

    public string? SettledBy { get; set; }

    public string? SettledHow { get; set; }

    public int Version { get; set; } = 1;
}
