namespace LogBook.Domain.Rounds.Planning;

/// <summary>The order that a person gave to the stops of a day that nobody planned.</summary>
/// <param name="Person">Code of the person.</param>
/// <param name="Sites">Codes of sites, first to last.</param>
public sealed record HandOrder(string Person, IReadOnlyList<string> Sites);
