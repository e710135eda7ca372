namespace LogBook.Domain.Summaries;

/// <summary>What the summary says of one system.</summary>
/// <param name="Name">Name of the system.</param>
/// <param name="Volume">Water volume, worded, or null.</param>
/// <param name="Found">Open findings, most urgent first.</param>
/// <param name="Seen">What was seen, in words.</param>
/// <param name="Results">Test results with their ranges.</param>
/// <param name="Figures">What was worked out.</param>
/// <param name="Done">What was done.</param>
public sealed record SummarySystem(
    string Name,
    string? Volume,
    IReadOnlyList<SummaryFinding> Found,
    IReadOnlyList<string> Seen,
    IReadOnlyList<SummaryResult> Results,
    IReadOnlyList<SummaryFigure> Figures,
    IReadOnlyList<string> Done);
