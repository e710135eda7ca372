using LogBook.Application.Data;
using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>A visit as it is kept.</summary>
/// <param name="Row">Its standing on this installation.</param>
/// <param name="Visit">The document, in the version asked for; its site is the one it was moved to.</param>
/// <param name="Versions">Every version, oldest first, without documents.</param>
public sealed record StoredVisit(VisitRow Row, Visit Visit, IReadOnlyList<StoredVersion> Versions);
