namespace LogBook.Domain.Summaries;

/// <summary>One computed figure.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Value with its interval, or the reason why there is none.</param>
public sealed record SummaryFigure(string Name, string Value);
