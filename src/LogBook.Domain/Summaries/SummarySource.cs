using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Summaries;

/// <summary>What a summary is made from.</summary>
/// <param name="FirmName">Name of the service firm.</param>
/// <param name="Firm">Set-up, retired records too: an old visit may name them.</param>
/// <param name="Visit">The visit in the version that is summed up.</param>
/// <param name="Findings">Findings of the site's systems, in every state, worded in the reader's language.</param>
/// <param name="Figures">Figures of this visit.</param>
public sealed record SummarySource(string FirmName, FirmSetUp Firm, Visit Visit, IReadOnlyList<Finding> Findings, IReadOnlyList<SummarySourceFigure> Figures)
{
    /// <summary>Whether findings and figures are known; not on a device, which holds a few visits only.</summary>
    public bool IsAssessed { get; init; } = true;
}
