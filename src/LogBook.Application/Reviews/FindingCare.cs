using LogBook.Application.Data;

namespace LogBook.Application.Reviews;

/// <summary>What people answer to findings; kept apart from them and laid over each time they are rebuilt.</summary>
public sealed class FindingCare
{
    /// <summary>Takes a finding on.</summary>
    public Task<SaveOutcome> AcknowledgeAsync(Viewer viewer, int findingId, string? because, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Puts a finding to sleep until a day.</summary>
    public Task<SaveOutcome> SnoozeAsync(Viewer viewer, int findingId, DateOnly until, string because, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Takes an answer back.</summary>
    public Task<SaveOutcome> ReopenAsync(Viewer viewer, int findingId, string? because, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
