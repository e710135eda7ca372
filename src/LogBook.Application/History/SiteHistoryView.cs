using LogBook.Application.Reviews;
using LogBook.Domain.History;
using LogBook.Domain.Sites;

namespace LogBook.Application.History;

/// <summary>Everything that the page Site history shows.</summary>
/// <param name="Heading">The system.</param>
/// <param name="From">First day.</param>
/// <param name="To">Day after the last.</param>
/// <param name="Visits">Visits of the period.</param>
/// <param name="Keys">All that was read in the period.</param>
/// <param name="Panels">What is shown of it.</param>
/// <param name="Marks">Events.</param>
/// <param name="Figures">Stored figures of the period, by time.</param>
/// <param name="Findings">Findings of the system in the period, latest first; none for a customer.</param>
/// <param name="Others">Other systems of the site.</param>
public sealed record SiteHistoryView(
    SystemHeading Heading,
    DateOnly From,
    DateOnly To,
    IReadOnlyList<SystemVisit> Visits,
    IReadOnlyList<string> Keys,
    IReadOnlyList<HistoryPanel> Panels,
    IReadOnlyList<HistoryMark> Marks,
    IReadOnlyList<HistoryFigure> Figures,
    IReadOnlyList<AttentionRow> Findings,
    IReadOnlyList<(string Code, string Name)> Others)
{
    /// <summary>Set-up of the system, for the units of its meters; null where several are drawn.</summary>
    public WaterSystem? System { get; init; }
}
