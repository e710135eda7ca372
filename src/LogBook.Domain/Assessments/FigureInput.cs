namespace LogBook.Domain.Assessments;

/// <summary>One input of a figure.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Value">Value as used.</param>
/// <param name="Unit">UCUM unit.</param>
/// <param name="StandardUncertainty">Standard uncertainty in the same unit, when it has one.</param>
public sealed record FigureInput(string Name, double Value, string Unit, double? StandardUncertainty = null);
