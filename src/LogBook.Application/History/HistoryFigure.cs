using LogBook.Domain.Assessments;
using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Application.History;

/// <summary>One stored figure of an interval.</summary>
/// <param name="Code">A code of <see cref="FigureCodes"/>.</param>
/// <param name="About">Drum, meter, probe or output; empty for the system.</param>
/// <param name="Visit">Visit that ends the interval.</param>
/// <param name="From">Wall time of its begin; null for a figure of the moment.</param>
/// <param name="To">Wall time of its end.</param>
/// <param name="Estimate">Value with its uncertainty; null where it could not be worked out.</param>
/// <param name="Why">Why there is no value.</param>
/// <param name="Inputs">What went in.</param>
public sealed record HistoryFigure(
    string Code,
    string About,
    Guid Visit,
    DateTime? From,
    DateTime To,
    Estimate? Estimate,
    IReadOnlyList<Text> Why,
    IReadOnlyList<FigureInput> Inputs);
