using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>One threshold with the reason for it.</summary>
/// <param name="Value">Value in the unit that its property names.</param>
/// <param name="Basis">Where it comes from, shown with the finding.</param>
public sealed record Threshold(double Value, Text Basis);
