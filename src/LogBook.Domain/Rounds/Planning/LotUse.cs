namespace LogBook.Domain.Rounds.Planning;

/// <summary>The reagent lot of a test that somebody used here last.</summary>
/// <param name="Technician">Code of the person.</param>
/// <param name="Test">Code of the test.</param>
/// <param name="Lot">Code of the lot.</param>
public sealed record LotUse(string Technician, string Test, string Lot);
