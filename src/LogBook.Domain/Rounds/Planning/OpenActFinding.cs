namespace LogBook.Domain.Rounds.Planning;

/// <summary>A finding of severity act that nobody has answered yet.</summary>
/// <param name="System">Code of the system; null for the whole site.</param>
/// <param name="Kind">One of <see cref="Findings.FindingKinds"/>.</param>
/// <param name="FirstSeen">First day on which the records allowed it.</param>
public sealed record OpenActFinding(string? System, string Kind, DateOnly FirstSeen);
