using LogBook.Domain.Visits;

namespace LogBook.Application.Visits;

/// <summary>Two contents under the identity of one visit.</summary>
/// <param name="Id">Number of the conflict.</param>
/// <param name="Visit">The visit that stands.</param>
/// <param name="ReceivedAt">Wall time at the site when the other content came.</param>
/// <param name="Source">How it came.</param>
/// <param name="Who">Who handed it in.</param>
/// <param name="Standing">What stands.</param>
/// <param name="Other">What came.</param>
/// <param name="Differences">What stands against what came; empty only where the two tell the same.</param>
/// <param name="Pictures">Photos of both whose pictures are here.</param>
public sealed record ConflictView(
    int Id,
    VisitRowView Visit,
    DateTime ReceivedAt,
    IntakeSource Source,
    string Who,
    Visit Standing,
    Visit Other,
    IReadOnlyList<VisitDifference> Differences,
    IReadOnlySet<Guid> Pictures);
