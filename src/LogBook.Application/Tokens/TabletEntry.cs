namespace LogBook.Application.Tokens;

/// <summary>A tablet that may send, in the list of those who keep the set-up.</summary>
/// <param name="Id">For revoking.</param>
/// <param name="Name">As the tablet was called.</param>
/// <param name="Account">E-mail of the person it sends for.</param>
/// <param name="CreatedAt">When it was registered, UTC.</param>
/// <param name="LastUsedAt">When it last asked the server, UTC, to some minutes.</param>
public sealed record TabletEntry(int Id, string Name, string Account, DateTime CreatedAt, DateTime? LastUsedAt);
