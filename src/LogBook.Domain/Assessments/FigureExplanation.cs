using LogBook.Domain.Languages;

namespace LogBook.Domain.Assessments;

/// <summary>How a figure is worked out, for "How was this worked out?".</summary>
/// <param name="Formula">The formula in words and signs.</param>
/// <param name="Source">Where the formula and its default uncertainties come from.</param>
public sealed record FigureExplanation(Text Formula, Text Source);
