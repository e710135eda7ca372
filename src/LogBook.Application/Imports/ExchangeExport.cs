using LogBook.Application.Data;
using LogBook.Domain.Exchange;

namespace LogBook.Application.Imports;

/// <summary>Takes set-up, visits and findings out as a canonical document.</summary>
public sealed class ExchangeExport
{
    /// <summary>Exports what the viewer sees.</summary>
    /// <param name="viewer">Who asks.</param>
    /// <param name="site">Only this site, or null.</param>
    /// <param name="from">Visits that arrived at or after this moment, UTC.</param>
    /// <param name="to">Visits that arrived before this moment, UTC.</param>
    /// <param name="asOf">What was known at this moment, UTC.</param>
    /// <param name="withFindings">With the findings.</param>
    /// <param name="cancellationToken">Stops.</param>
    /// <returns>The document, or null when the viewer knows no such site.</returns>
    public Task<ExchangeDocument?> ExportAsync(
        Viewer viewer, string? site = null, DateTime? from = null, DateTime? to = null, DateTime? asOf = null, bool withFindings = false, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
