using LogBook.Application.Data;

namespace LogBook.Application.Visits;

/// <summary>Reads visits.</summary>
public sealed class VisitReader
{
    /// <summary>A visit, in its current version or the one asked for; null when the viewer knows none.</summary>
    public Task<StoredVisit?> FindAsync(Viewer viewer, Guid visitId, int? version = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
