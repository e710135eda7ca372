namespace LogBook.Domain.Outcomes;

/// <summary>Something about an entry to correct or confirm; says nothing about the plant (that is a finding).</summary>
/// <param name="Path">JSON path of the field, as in "visits[0].systems[0].readings[2].unit".</param>
/// <param name="Code">Stable code, for tests and help.</param>
/// <param name="Message">What is wrong, the value, and what is expected, in English or the language asked for.</param>
/// <param name="Blocks">True when it must be corrected; false for "Please read again".</param>
public sealed record Issue(string Path, string Code, string Message, bool Blocks = true);
