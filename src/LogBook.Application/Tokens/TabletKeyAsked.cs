namespace LogBook.Application.Tokens;

/// <summary>A person who forgot the PIN of a tablet and asks for the second key to their drafts.</summary>
/// <param name="Id">For releasing.</param>
/// <param name="Tablet">Name of the tablet.</param>
/// <param name="Account">E-mail of the person.</param>
/// <param name="AskedAt">When, UTC.</param>
public sealed record TabletKeyAsked(string Id, string Tablet, string Account, DateTime AskedAt);
