namespace LogBook.Domain.Summaries;

/// <summary>One result.</summary>
/// <param name="Test">Test and sample point.</param>
/// <param name="Result">Value with unit, or why there is none.</param>
/// <param name="Range">Range in force, or empty.</param>
/// <param name="Standing">In or out, by word and shape.</param>
/// <param name="IsOutside">Whether it stands outside its range.</param>
public sealed record SummaryResult(string Test, string Result, string Range, string Standing, bool IsOutside);
