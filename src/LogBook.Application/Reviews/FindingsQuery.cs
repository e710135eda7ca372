using LogBook.Application.Data;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Application.Reviews;

/// <summary>Findings for other programs and for the command.</summary>
public sealed class FindingsQuery
{
    /// <summary>Findings in every state, by site, system, first day and kind.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="site">Only this site, or null.</param>
    /// <param name="asOf">Works them out anew as they stood then; null for the stored ones.</param>
    /// <param name="language">Language of the texts; the viewer's when null.</param>
    /// <param name="cancellationToken">Stops.</param>
    public Task<IReadOnlyList<Finding>> ListAsync(Viewer viewer, string? site = null, DateTime? asOf = null, Language? language = null, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");

    /// <summary>The last moment that the data tell of (departure, result or amendment), UTC; null without visits.</summary>
    public Task<DateTime?> LastMomentAsync(Viewer viewer, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
