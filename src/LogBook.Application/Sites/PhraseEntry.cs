using LogBook.Domain.Phrases;

namespace LogBook.Application.Sites;

/// <summary>The firm's own quick phrases as they stand.</summary>
/// <param name="Phrases">The phrases.</param>
/// <param name="Version">Version for the next save; 0 when none were ever kept.</param>
public sealed record PhraseEntry(QuickPhrases Phrases, int Version);
