using LogBook.Domain.Languages;

namespace LogBook.Application.History;

/// <summary>One test at one sampling point over time.</summary>
/// <param name="Key">Name in the address: point, full stop, test.</param>
/// <param name="At">Sampling point.</param>
/// <param name="Test">Code of the test.</param>
/// <param name="Unit">UCUM unit of all values.</param>
/// <param name="Series">Readings by source.</param>
/// <param name="Bands">Ranges in force, step by step.</param>
/// <param name="SetPoints">Set points in force (conductivity of the tower only).</param>
/// <param name="InOtherUnits">Readings left out because their unit cannot be put into <paramref name="Unit"/>; said beside the chart.</param>
public sealed record HistoryPanel(
    string Key,
    string At,
    string Test,
    string Unit,
    IReadOnlyList<HistorySeries> Series,
    IReadOnlyList<HistoryBand> Bands,
    IReadOnlyList<HistoryBand> SetPoints,
    int InOtherUnits)
{
    /// <summary>Title where test and sample point do not say it.</summary>
    public Text? Title { get; init; }
}
