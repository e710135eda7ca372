using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Records;

/// <summary>One reading of a water meter with what passed since the one before.</summary>
/// <param name="At">When, UTC.</param>
/// <param name="Visit">The visit.</param>
/// <param name="Facts">What was read; litres by dial and by total.</param>
/// <param name="Days">Days since the last reading; null for the first.</param>
/// <param name="PerDay">Water a day, L/d, by the dial where it tells, else by the total.</param>
/// <param name="TotalAgainstDial">Total against dial, %; the meter's own error cancels. None where one of both is missing.</param>
/// <param name="PulsesLost">Pulses that the total lacks, 1; below zero where it has too many. None where one of both is missing.</param>
/// <param name="RolledOver">Whether the dial passed its end since then.</param>
public sealed record MeterPoint(
    DateTime At, Guid Visit, MeterFacts Facts, double? Days, Computed<Estimate> PerDay, Computed<Estimate> TotalAgainstDial, Computed<Estimate> PulsesLost, bool RolledOver);
