using LogBook.Domain.Findings;

namespace LogBook.Application.Data;

/// <summary>A finding of the stored assessment with its wording; rebuilt from the documents at will.</summary>
public sealed class FindingRow : ICustomerMayOwn
{
    public int Id { get; set; }

    /// <summary>Null for a finding about an instrument, a lot or a person: the firm's own.</summary>
    public int? CustomerId { get; set; }

    public int? SiteId { get; set; }

    public int? SystemId { get; set; }

    public string Kind { get; set; } = "";

    /// <summary>What it concerns, as one text ("drum:D-INH"); empty when it concerns the system.</summary>
    public string AboutKey { get; set; } = "";

    public Severity Severity { get; set; }

    public FindingState State { get; set; }

    public DateOnly FirstSeen { get; set; }

    public DateOnly LastSeen { get; set; }

    public DateOnly? ClosedOn { get; set; }

    /// <summary>Asleep until this day.</summary>
    public DateOnly? Until { get; set; }

    public Guid? FirstVisit { get; set; }

    /// <summary>The finding as JSON, worded in English.</summary>
    public string English { get; set; } = "";

    /// <summary>The same, worded in Spanish.</summary>
    public string Spanish { get; set; } = "";

    /// <summary>The same, worded in Portuguese.</summary>
    public string Portuguese { get; set; } = "";

    public string EngineVersion { get; set; } = "";
}
