namespace LogBook.Domain.Languages;

/// <summary>A computed number with its unit, as a value for a place in a text.</summary>
/// <param name="Value">Finite.</param>
/// <param name="Unit">UCUM code; "1" for a ratio.</param>
public readonly record struct Amount(double Value, string Unit);
