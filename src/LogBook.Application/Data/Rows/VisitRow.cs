using LogBook.Domain.Visits;

namespace LogBook.Application.Data;

/// <summary>A visit; what was recorded stands in its versions.</summary>
public sealed class VisitRow : ICustomerOwned, IVersioned
{
    public int Id { get; set; }

    /// <summary>Identity outside, made where the visit was born.</summary>
    public Guid VisitId { get; set; }

    public int CustomerId { get; set; }

    public int SiteId { get; set; }

    public int CurrentVersion { get; set; } = 1;

    public VisitKind Kind { get; set; }

    /// <summary>Code of the technician as written.</summary>
    public string Technician { get; set; } = "";

    public DateTime ArrivedAt { get; set; }

    public DateTime? LeftAt { get; set; }

    /// <summary>When the first version reached this installation.</summary>
    public DateTime ReceivedAt { get; set; }

    public VisitState State { get; set; }

    public DateTime? ReviewedAt { get; set; }

    public string? ReviewedBy { get; set; }

    /// <summary>Whether the review found that something in the visit did not hold.</summary>
    public bool ReviewFault { get; set; }

    /// <summary>Since when the visit does not count: it stays readable, no figure uses it.</summary>
    public DateTime? VoidedAt { get; set; }

    public string? VoidedBy { get; set; }

    public string? VoidedWhy { get; set; }

    /// <summary>Site the document names, where the visit was moved to another since.</summary>
    public int? MovedFromSiteId { get; set; }

    public int Version { get; set; } = 1;
}
