namespace LogBook.Web.Api;

/// <summary>Today's round in words.</summary>
/// <param name="Now">The server's moment, by which a tablet corrects its own clock.</param>
/// <param name="Stops">Sites, due first.</param>
public sealed record TabletRound(string Now, IReadOnlyList<TabletStop> Stops);
