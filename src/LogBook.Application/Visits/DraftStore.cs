using LogBook.Application.Data;

namespace LogBook.Application.Visits;

/// <summary>Visits that people are still writing on the server; each sees their own.</summary>
public sealed class DraftStore
{
    /// <summary>Saves a draft. A version of 0 is a new one; another version than the stored one is refused.</summary>
    public Task<SaveOutcome> SaveAsync(Viewer viewer, Guid visitId, string siteCode, string document, int expectedVersion, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>One of the viewer's own drafts, or null.</summary>
    public Task<Draft?> FindAsync(Viewer viewer, Guid visitId, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>The viewer's own drafts, latest first.</summary>
    public Task<IReadOnlyList<Draft>> ListAsync(Viewer viewer, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Deletes a draft whose visit has been received with this hash; any other is kept.</summary>
    /// <returns>Whether it was deleted.</returns>
    public Task<bool> DeleteReceivedAsync(Viewer viewer, Guid visitId, string receivedSha256, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Throws a draft away because its writer says so.</summary>
    /// <returns>Whether there was one.</returns>
    public Task<bool> DiscardAsync(Viewer viewer, Guid visitId, string why, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
