namespace LogBook.Application.Visits;

/// <summary>A visit that is still being written.</summary>
/// <param name="VisitId">Identity that the visit will have.</param>
/// <param name="Site">Code of the site.</param>
/// <param name="Document">The draft as its form wrote it.</param>
/// <param name="UpdatedAt">Last save, UTC.</param>
/// <param name="Version">For the next save.</param>
public sealed record Draft(Guid VisitId, string Site, string Document, DateTime UpdatedAt, int Version);
