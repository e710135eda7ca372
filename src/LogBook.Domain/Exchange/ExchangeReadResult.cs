using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Exchange;

/// <summary>A document that was read, or everything that is wrong with it.</summary>
/// <param name="Document">The document; null when there is an issue.</param>
/// <param name="Issues">Every issue found; empty when the document may be taken in.</param>
public sealed record ExchangeReadResult(ExchangeDocument? Document, IReadOnlyList<Issue> Issues)
{
    /// <summary>
    /// The document without the visits that have an issue, for an import in part; null when anything else has an issue, or
    /// when only the form was read and it had one.
    /// </summary>
    public ExchangeDocument? Good { get; init; } = Document;

    /// <summary>Places in the list of visits that an issue concerns, and that are not in <see cref="Good"/>.</summary>
    public IReadOnlyList<int> RefusedVisits { get; init; } = [];
}
