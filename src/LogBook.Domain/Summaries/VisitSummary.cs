using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Summaries;

/// <summary>
/// Everything a visit summary says, already worded and rounded for one reader: page, mail and plain text are written from this
/// one model and can therefore not disagree.
/// </summary>
public sealed record VisitSummary
{
    /// <summary>Language of the reader.</summary>
    public required Language Language { get; init; }

    /// <summary>Name of the service firm.</summary>
    public required string Firm { get; init; }

    /// <summary>Name of the customer.</summary>
    public required string Customer { get; init; }

    /// <summary>Code of the site.</summary>
    public required string SiteCode { get; init; }

    /// <summary>Name of the site.</summary>
    public required string SiteName { get; init; }

    /// <summary>Identity of the visit.</summary>
    public required Guid VisitId { get; init; }

    /// <summary>Version of the visit, 1 or more.</summary>
    public required int Version { get; init; }

    /// <summary>Why it was issued again; null for the first version.</summary>
    public string? ReissueReason { get; init; }

    /// <summary>Day and wall times of the visit at the site, worded.</summary>
    public required string When { get; init; }

    /// <summary>Day of the visit at the site, worded.</summary>
    public required string Day { get; init; }

    /// <summary>Names of who visited.</summary>
    public required string By { get; init; }

    /// <summary>Kind of the visit, worded.</summary>
    public required string Purpose { get; init; }

    /// <summary>Why the work could not be done, for a stopped visit.</summary>
    public string? Stopped { get; init; }

    /// <summary>Whether findings and figures of the records are part of it; a device without them says that they follow.</summary>
    public bool IsAssessed { get; init; } = true;

    /// <summary>What the customer is asked to decide or do.</summary>
    public IReadOnlyList<SummaryNeed> Needs { get; init; } = [];

    /// <summary>Each system that was visited.</summary>
    public IReadOnlyList<SummarySystem> Systems { get; init; } = [];

    /// <summary>Cautions that belong to what is told.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>Who signed, or why not, one line each.</summary>
    public IReadOnlyList<string> Signatures { get; init; } = [];
}
