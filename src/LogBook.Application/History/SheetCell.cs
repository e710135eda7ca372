using LogBook.Domain.Programmes;

namespace LogBook.Application.History;

/// <summary>One reading on the sheet.</summary>
/// <param name="Text">As it was entered, without unit; null where nothing was read.</param>
/// <param name="Standing">Where it stands against the range in force on its day.</param>
/// <param name="NotTaken">Why it was not taken.</param>
public sealed record SheetCell(string? Text, RangeStanding Standing, string? NotTaken);
