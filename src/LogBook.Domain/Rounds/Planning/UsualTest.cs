namespace LogBook.Domain.Rounds.Planning;

/// <summary>A reading that is taken at most visits of a system.</summary>
/// <param name="At">Sample point.</param>
/// <param name="Test">Code of the test.</param>
public sealed record UsualTest(string At, string Test);
