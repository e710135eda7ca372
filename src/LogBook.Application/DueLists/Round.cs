namespace LogBook.Application.DueLists;

/// <summary>Today's round.</summary>
/// <param name="Person">Whose round; null for the whole firm's.</param>
/// <param name="Stops">Sites, by their most urgent clock.</param>
public sealed record Round(string? Person, IReadOnlyList<RoundStop> Stops);
