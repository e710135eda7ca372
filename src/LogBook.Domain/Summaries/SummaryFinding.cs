namespace LogBook.Domain.Summaries;

/// <summary>A finding as the customer is told it.</summary>
/// <param name="Urgency">Worded severity.</param>
/// <param name="Text">The sentence.</param>
public sealed record SummaryFinding(string Urgency, string Text);
