using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Application.Summaries;

/// <summary>
/// Everything a visit summary says, already worded and rounded for one reader: page, mail and plain text are written from this
/// one model and can therefore not disagree.
/// </summary>
public sealed record VisitSummary
{
    public required Language Language { get; init; }

    public required string Firm { get; init; }

    public required string Customer { get; init; }

    public required string SiteCode { get; init; }

    public required string SiteName { get; init; }

    public required Guid VisitId { get; init; }

    public required int Version { get; init; }

    /// <summary>Why it was issued again; null for the first version.</summary>
    public string? ReissueReason { get; init; }

    public required string When { get; init; }

    public required string Day { get; init; }

    public required string By { get; init; }

    public required string Purpose { get; init; }

    /// <summary>Why the work could not be done, for a stopped visit.</summary>
    public string? Stopped { get; init; }

    public IReadOnlyList<SummaryNeed> Needs { get; init; } = [];

    public IReadOnlyList<SummarySystem> Systems { get; init; } = [];

    public IReadOnlyList<string> Cautions { get; init; } = [];

    public IReadOnlyList<string> Signatures { get; init; } = [];
}
