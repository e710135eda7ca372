using LogBook.Domain.Findings;

namespace LogBook.Application.Data;

/// <summary>What a person answered to a finding; laid over the stored assessment each time it is rebuilt.</summary>
public sealed class FindingMarkRow : ICustomerMayOwn, IVersioned
{
    public int Id { get; set; }

    public int? CustomerId { get; set; }

    public int? SiteId { get; set; }

    public int? SystemId { get; set; }

    public string Kind { get; set; } = "";

    public string AboutKey { get; set; } = "";

    /// <summary>With kind, subject and system: which appearance of the finding is meant.</summary>
    public DateOnly FirstSeen { get; set; }

    public FindingState State { get; set; }

    public DateOnly? Until { get; set; }

    public string? Because { get; set; }

    /// <summary>Code or name of the person who took it on.</summary>
    public string? Owner { get; set; }

    /// <summary>How severe it was when it was answered: what gets worse wakes up.</summary>
    public Severity? Severity { get; set; }

    public string Who { get; set; } = "";

    public DateTime At { get; set; }

    public int Version { get; set; } = 1;
}
