namespace LogBook.Application.Tokens;

/// <summary>A token in its owner's list.</summary>
public sealed record TokenEntry(int Id, string Name, IReadOnlyList<string> Scopes, DateTime CreatedAt, DateTime ExpiresAt, DateTime? LastUsedAt, DateTime? RevokedAt);
