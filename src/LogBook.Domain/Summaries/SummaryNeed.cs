namespace LogBook.Domain.Summaries;

/// <summary>Something the customer is asked to decide or do.</summary>
/// <param name="What">What is asked.</param>
/// <param name="Consequence">What happens otherwise, or null.</param>
/// <param name="Due">By when, worded, or null.</param>
public sealed record SummaryNeed(string What, string? Consequence, string? Due);
