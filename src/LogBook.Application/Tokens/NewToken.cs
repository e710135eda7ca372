namespace LogBook.Application.Tokens;

/// <summary>A token just made; its text is shown this once.</summary>
/// <param name="Id">For revoking.</param>
/// <param name="Text">What a program sends.</param>
/// <param name="ExpiresAt">UTC.</param>
public sealed record NewToken(int Id, string Text, DateTime ExpiresAt);
