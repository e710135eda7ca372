namespace LogBook.Domain.Rounds;

/// <summary>What the records of one system tell about the meters, lots and people it shares with others, in the order of knowledge.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Steps">Steps by moment of knowledge.</param>
public sealed record SystemClues(string Site, string System, IReadOnlyList<ClueStep> Steps);
