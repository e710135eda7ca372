namespace LogBook.Domain.Rounds.Planning;

/// <summary>A test that needs reagent, with how often it is to be done.</summary>
/// <param name="Test">Code of the test.</param>
/// <param name="Times">Samples of the day.</param>
/// <param name="Lots">Lots on file for it, the person's own first, then by last day.</param>
public sealed record PackTest(string Test, int Times, IReadOnlyList<PackLot> Lots);
