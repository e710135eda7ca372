namespace LogBook.Application.History;

/// <summary>The same reading or figure of two or three systems on one axis.</summary>
/// <param name="From">First day.</param>
/// <param name="To">Day after the last.</param>
/// <param name="Key">Which reading or figure; null where the systems have none.</param>
/// <param name="Systems">The systems compared.</param>
/// <param name="Panel">One series for each system; null where nothing was read.</param>
/// <param name="Keys">Readings that at least one of them has in the period, those of most systems first.</param>
/// <param name="Figures">Figures by interval that at least one of them has in the period, each with its latest value.</param>
/// <param name="All">All systems that the viewer sees.</param>
public sealed record CompareView(
    DateOnly From, DateOnly To, string? Key, IReadOnlyList<ComparedSystem> Systems, HistoryPanel? Panel, IReadOnlyList<string> Keys, IReadOnlyList<ComparedFigure> Figures, IReadOnlyList<ComparedSystem> All);
