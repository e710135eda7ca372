namespace LogBook.Domain.Rounds;

/// <summary>One sign that a record wants a second look.</summary>
/// <param name="Code">One of <see cref="Findings.SecondLookSigns"/>.</param>
/// <param name="Value">What was seen, in <paramref name="Unit"/>.</param>
/// <param name="Limit">What it is compared with.</param>
/// <param name="Unit">UCUM unit.</param>
public sealed record SignClue(string Code, double Value, double Limit, string Unit);
