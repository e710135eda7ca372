using LogBook.Domain.Findings;

namespace LogBook.Bank.Scoring;

/// <summary>Something a judge said about a system.</summary>
/// <param name="Kind">Kind of finding.</param>
/// <param name="About">What it concerns, for readers.</param>
/// <param name="Seen">Day it was first said, at any severity.</param>
/// <param name="Raised">Day it first was "plan" or "act"; null when it never was.</param>
/// <param name="Closed">Day it was closed; null when it stands at the end.</param>
/// <param name="Severity">Highest severity.</param>
/// <param name="Text">The sentence.</param>
internal sealed record Flag(string Kind, string About, DateOnly Seen, DateOnly? Raised, DateOnly? Closed, Severity Severity, string Text);
