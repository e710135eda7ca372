using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>One test down the sheet.</summary>
/// <param name="At">Sampling point.</param>
/// <param name="Test">Test.</param>
/// <param name="Source">Who or what read it.</param>
/// <param name="Unit">UCUM unit.</param>
/// <param name="Range">Range in force at the last visit; null where there is none in this unit.</param>
/// <param name="Cells">One a visit, in the order of the sheet's visits.</param>
public sealed record SheetLine(string At, string Test, ReadingSource Source, string Unit, TestRange? Range, IReadOnlyList<SheetCell> Cells);
