using LogBook.Domain.Findings;
using LogBook.Domain.Languages;

namespace LogBook.Application.History;

/// <summary>One mark on the time axis.</summary>
/// <param name="Kind">Row and shape.</param>
/// <param name="At">Wall time at the site.</param>
/// <param name="Visit">Visit at which it was recorded; null for what time alone opened.</param>
/// <param name="Words">What happened.</param>
/// <param name="Severity">Severity of a finding.</param>
public sealed record HistoryMark(HistoryMarkKind Kind, DateTime At, Guid? Visit, Said Words, Severity? Severity = null);
