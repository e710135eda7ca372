namespace LogBook.Application.RecordPacks;

/// <summary>A row of a record table.</summary>
/// <param name="Cells">Text, number, day or wall time for each column; null is empty.</param>
/// <param name="Group">Heading on paper over the rows that share it; the workbook tells the same in columns.</param>
public sealed record RecordRow(IReadOnlyList<object?> Cells, string? Group = null);
