using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Estimates;

/// <summary>A result with all that "How was this worked out?" tells.</summary>
/// <param name="Result">Value with its uncertainty, or why there is none.</param>
/// <param name="Name">What it is.</param>
/// <param name="Formula">The formula in words and signs.</param>
/// <param name="Source">Where the formula comes from.</param>
/// <param name="Inputs">What went in.</param>
public sealed record Worked(Computed<Estimate> Result, Text Name, Text Formula, Text Source, IReadOnlyList<FigureInput> Inputs);
