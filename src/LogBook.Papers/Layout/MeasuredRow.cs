namespace LogBook.Papers.Layout;

/// <summary>A row after wrapping: the lines of each cell, and of the note below them.</summary>
internal sealed record MeasuredRow(PaperRow Row, IReadOnlyList<List<string>> Cells, List<string> Note)
{
    public int CellLines { get; } = Cells.Count == 0 ? 1 : Cells.Max(lines => lines.Count);

    public int LineCount => CellLines + Note.Count;
}
