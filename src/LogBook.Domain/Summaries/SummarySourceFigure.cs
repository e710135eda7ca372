using LogBook.Domain.Estimates;
using LogBook.Domain.Languages;

namespace LogBook.Domain.Summaries;

/// <summary>A stored figure of the visit.</summary>
/// <param name="System">Code of the system.</param>
/// <param name="Code">Which figure.</param>
/// <param name="About">Drum, meter, probe or output, or empty.</param>
/// <param name="Estimate">The figure, or null.</param>
/// <param name="Reason">Why there is none.</param>
public sealed record SummarySourceFigure(string System, string Code, string About, Estimate? Estimate, Text? Reason);
