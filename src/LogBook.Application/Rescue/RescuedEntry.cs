namespace LogBook.Application.Rescue;

/// <summary>A draft that was taken in and is neither finished nor discarded.</summary>
/// <param name="VisitId">Identity of the visit it will be.</param>
/// <param name="Site">Code of the site.</param>
/// <param name="SiteName">Name of the site.</param>
/// <param name="Holder">Account that has it on the server.</param>
/// <param name="IsMine">Whether that is the viewer's.</param>
/// <param name="From">Where it came from.</param>
public sealed record RescuedEntry(Guid VisitId, string Site, string SiteName, string Holder, bool IsMine, RescuedDraft From);
