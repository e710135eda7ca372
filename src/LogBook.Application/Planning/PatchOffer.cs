namespace LogBook.Application.Planning;

/// <summary>Sites of a technician and the colleague who is proposed for them.</summary>
/// <param name="From">Code of who has them.</param>
/// <param name="FromName">Name.</param>
/// <param name="To">Code of the colleague.</param>
/// <param name="ToName">Name.</param>
/// <param name="Sites">Codes of the sites.</param>
public sealed record PatchOffer(string From, string FromName, string To, string ToName, IReadOnlyList<string> Sites);
