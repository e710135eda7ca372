namespace LogBook.Domain.Quantities;

/// <summary>One unit that LogBook accepts: base value = (value + offset) × factor.</summary>
/// <param name="Code">UCUM code as in the exchange format, case-sensitive.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">Base units in one of it.</param>
/// <param name="Offset">Added before the factor; only °F has one.</param>
public sealed record UnitDefinition(string Code, UnitDimension Dimension, double Factor, double Offset = 0);
