using LogBook.Application.Data;
using LogBook.Domain.History;

namespace LogBook.Application.Reviews;

/// <summary>Keeps the stored assessments: findings and figures as the engine sees them, with people's answers laid over.</summary>
public sealed class AssessmentKeeper
{
    /// <summary>All that is recorded of a system, in every version; voided visits are left out. Null when the viewer knows no such system.</summary>
    public Task<SystemHistory?> HistoryAsync(Viewer viewer, string site, string system, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Assesses one system as of a moment (now when null) and stores the result.</summary>
    /// <returns>Whether the viewer knows the system.</returns>
    public Task<bool> AssessAsync(Viewer viewer, int systemId, DateTime? asOf = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Assesses every system whose records, rules or day have changed since its stored assessment.</summary>
    /// <returns>How many were assessed.</returns>
    public Task<int> AssessDueAsync(Viewer viewer, DateTime? asOf = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>Assesses every system anew.</summary>
    /// <returns>How many were assessed.</returns>
    public Task<int> AssessAllAsync(Viewer viewer, DateTime? asOf = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
