using LogBook.Domain.Visits;

namespace LogBook.Application.History;

/// <summary>One visit across the sheet.</summary>
public sealed record SheetVisit(Guid Visit, DateTime At, string Initials, VisitKind Kind);
