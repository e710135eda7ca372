namespace LogBook.Web.Api;

/// <summary>What a registered tablet keeps for a person.</summary>
/// <param name="Token">Credential; told this once.</param>
/// <param name="ExpiresAt">Moment with offset.</param>
/// <param name="Person">Code of the person.</param>
/// <param name="Name">As the person is called.</param>
/// <param name="Language">Code of the person's language.</param>
public sealed record TabletCredential(string Token, string ExpiresAt, string Person, string Name, string Language);
