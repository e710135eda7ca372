using LogBook.Domain.Languages;

namespace LogBook.Application.RecordPacks;

/// <summary>A column of a record table.</summary>
/// <param name="Title">Its heading.</param>
/// <param name="Weight">Share of the width on paper; 0 stands in the workbook only.</param>
/// <param name="IsFigure">Stands at the right edge on paper.</param>
public sealed record RecordColumn(Text Title, double Weight = 1, bool IsFigure = false);
