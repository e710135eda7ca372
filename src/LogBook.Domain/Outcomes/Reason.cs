using LogBook.Domain.Languages;

namespace LogBook.Domain.Outcomes;

/// <summary>Why something could not be computed.</summary>
/// <param name="Code">Stable code, lower case with hyphens.</param>
/// <param name="Text">For people, in three languages.</param>
public sealed record Reason(string Code, Text Text);
