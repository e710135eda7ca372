namespace LogBook.Application.History;

/// <summary>The last twelve visits on one sheet.</summary>
/// <param name="Heading">The system.</param>
/// <param name="Visits">At most twelve, oldest first.</param>
/// <param name="Lines">Tests, tower water first.</param>
public sealed record SheetView(SystemHeading Heading, IReadOnlyList<SheetVisit> Visits, IReadOnlyList<SheetLine> Lines);
