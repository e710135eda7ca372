using LogBook.Domain.Languages;

namespace LogBook.Domain.Simulation;

/// <summary>One fault of a programme.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="At">Moment it happens first, UTC.</param>
/// <param name="Count">How often within the weeks run.</param>
/// <param name="Output">Output concerned, or null.</param>
/// <param name="Says">The sentence, for the first time it happens.</param>
public sealed record LookAheadFault(LookAheadFaultKind Kind, DateTime At, int Count, string? Output, Said Says);
