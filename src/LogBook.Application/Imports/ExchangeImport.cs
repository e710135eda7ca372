using LogBook.Application.Data;

namespace LogBook.Application.Imports;

/// <summary>Brings a document of the exchange format in: all or nothing, or with <c>partial</c> the good visits.</summary>
public sealed class ExchangeImport
{
    /// <summary>Imports a document.</summary>
    /// <param name="viewer">Who imports.</param>
    /// <param name="json">The document, UTF-8.</param>
    /// <param name="partial">Writes the good visits and lists the refused ones.</param>
    /// <param name="update">Lets set-up under an existing code change.</param>
    /// <param name="withSummaries">Puts visit summaries into the outbox; a replay of the past does not.</param>
    /// <param name="cancellationToken">Stops; nothing is written then.</param>
    public Task<ImportOutcome> ImportAsync(Viewer viewer, Stream json, bool partial = false, bool update = false, bool withSummaries = false, CancellationToken cancellationToken = default) => throw new NotSupportedException("Comes with the next change.");
}
