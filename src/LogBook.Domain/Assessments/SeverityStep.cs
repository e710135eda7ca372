using LogBook.Domain.Findings;

namespace LogBook.Domain.Assessments;

/// <summary>A day from which a finding had a severity.</summary>
/// <param name="On">Day on which it became known.</param>
/// <param name="Severity">Severity from then on, after folding.</param>
public readonly record struct SeverityStep(DateOnly On, Severity Severity);
