namespace LogBook.Papers;

/// <summary>One row of a table.</summary>
public sealed record PaperRow
{
    private PaperRow(IReadOnlyList<PaperCell> cells, bool isGroup, string? note)
    {
        Cells = cells;
        IsGroup = isGroup;
        Note = note;
    }

    /// <summary>Its cells, at most as many as the table has columns.</summary>
    public IReadOnlyList<PaperCell> Cells { get; }

    /// <summary>A heading over the whole width that stays with the row after it.</summary>
    public bool IsGroup { get; }

    /// <summary>Small text over the whole width below the cells.</summary>
    public string? Note { get; }

    /// <summary>A row of cells.</summary>
    public static PaperRow Of(params PaperCell[] cells) => new(cells, isGroup: false, note: null);

    /// <summary>A row of cells with a note below it.</summary>
    public static PaperRow WithNote(string? note, params PaperCell[] cells) => new(cells, isGroup: false, string.IsNullOrWhiteSpace(note) ? null : note);

    /// <summary>A heading over the whole width.</summary>
    public static PaperRow Group(string text) => new([new PaperCell(text, Bold: true)], isGroup: true, note: null);
}
