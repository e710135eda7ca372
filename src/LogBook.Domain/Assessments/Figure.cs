using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Assessments;

/// <summary>One computed figure of a visit or of the interval that ends with it.</summary>
/// <param name="Code">What it is: see <see cref="FigureCodes"/>.</param>
/// <param name="About">Code of the drum, meter, probe or output it concerns, or null.</param>
/// <param name="VisitId">Visit that it belongs to.</param>
/// <param name="From">Start of the interval, UTC; null for an instant.</param>
/// <param name="To">End of the interval or the instant, UTC.</param>
/// <param name="Result">Estimate, or the reasons why there is none.</param>
/// <param name="Inputs">Names and values of the inputs, for "How was this worked out?".</param>
public sealed record Figure(
    string Code,
    string? About,
    Guid VisitId,
    DateTime? From,
    DateTime To,
    Computed<Estimate> Result,
    IReadOnlyList<FigureInput> Inputs);
