namespace LogBook.Domain.Rounds;

/// <summary>One visit to one system that a finding about a hand meter, a reagent lot or somebody's records rests on.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="System">Code of the system.</param>
/// <param name="Visit">The visit.</param>
/// <param name="At">Arrival, UTC.</param>
/// <param name="Technician">Code of who made it.</param>
/// <param name="Percent">How far the meter or the lot read from what the site let expect, %; null for a record.</param>
/// <param name="Signs">Signs that the record wants a second look; none for a meter or a lot.</param>
public sealed record RoundEvidence(string Site, string System, Guid Visit, DateTime At, string Technician, double? Percent, IReadOnlyList<SignClue> Signs);
