namespace LogBook.Web.Api;

/// <summary>One site of the round in words.</summary>
/// <param name="Site">Code.</param>
/// <param name="Name">Name.</param>
/// <param name="Urgency">late, due, soon or later.</param>
/// <param name="Due">When somebody should be there, and why.</param>
/// <param name="Last">The last visit.</param>
/// <param name="Since">What changed since the person was there.</param>
public sealed record TabletStop(string Site, string Name, string Urgency, TabletWords Due, TabletWords Last, IReadOnlyList<TabletWords> Since);
