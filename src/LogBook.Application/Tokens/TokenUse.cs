namespace LogBook.Application.Tokens;

/// <summary>A token that was sent and counts.</summary>
/// <param name="UserId">Its owner.</param>
/// <param name="TokenId">The token.</param>
/// <param name="Scopes">What it may be used for.</param>
public sealed record TokenUse(int UserId, int TokenId, IReadOnlyList<string> Scopes);
