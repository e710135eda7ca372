namespace LogBook.Application.MoveIn;

/// <summary>Something in the file that could mean more than one thing, or that cannot stand as it is.</summary>
/// <param name="Id">Identity, by which an answer is given for this one place.</param>
/// <param name="ColumnId">Identity by which an answer is given for all alike in the column; null where each is asked by itself.</param>
/// <param name="Sheet">Name of the sheet.</param>
/// <param name="Address">Address of the cell, "D7", or of the column, "D".</param>
/// <param name="Heading">Heading of the column.</param>
/// <param name="Value">What stands there.</param>
/// <param name="Says">What is asked, or what is wrong and what is expected.</param>
/// <param name="Choices">Answers.</param>
/// <param name="IsFault">It cannot stand as it is, whatever is answered; the answers say what is to become of it.</param>
public sealed record MoveInQuestion(string Id, string? ColumnId, string Sheet, string Address, string Heading, string Value, string Says, IReadOnlyList<MoveInChoice> Choices, bool IsFault = false);
