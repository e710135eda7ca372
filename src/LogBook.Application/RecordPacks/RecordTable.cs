using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>One part of a record pack: a section on paper and a sheet in the workbook, from the same rows.</summary>
/// <param name="Title">Heading, and name of the sheet.</param>
/// <param name="Columns">Columns.</param>
/// <param name="Rows">Rows.</param>
/// <param name="Intro">What it says, and what it does not.</param>
/// <param name="IsOnPaper">Whether it stands on paper too.</param>
public sealed record RecordTable(Text Title, IReadOnlyList<RecordColumn> Columns, IReadOnlyList<RecordRow> Rows, Text? Intro = null, bool IsOnPaper = true);
