namespace LogBook.Domain.Languages;

/// <summary>A count as it was read, shown with all its digits, as a value for a place in a text.</summary>
/// <param name="Value">Finite.</param>
public readonly record struct Count(double Value);
