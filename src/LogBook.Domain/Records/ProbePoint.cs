using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Probes;

namespace LogBook.Domain.Records;

/// <summary>One comparison of a conductivity probe.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Visit">The visit.</param>
/// <param name="Facts">What was read and the errors that follow, % of the reference.</param>
/// <param name="Split">The error split into fouling and calibration, %; none where the probe was not cleaned or had no reference.</param>
/// <param name="TolerancePercent">Error that is borne, %; null without a reference.</param>
/// <param name="IsRenewed">Whether the probe was renewed at the visit.</param>
/// <param name="IsCleaned">Whether it was cleaned, by a reading after cleaning or by an event.</param>
public sealed record ProbePoint(DateTime At, Guid Visit, ProbeFacts Facts, Computed<ProbeErrorSplit> Split, double? TolerancePercent, bool IsRenewed, bool IsCleaned);
