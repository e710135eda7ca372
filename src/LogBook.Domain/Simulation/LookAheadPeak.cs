namespace LogBook.Domain.Simulation;

/// <summary>Highest conductivity.</summary>
/// <param name="Utc">When.</param>
/// <param name="UsPerCm">How high.</param>
public sealed record LookAheadPeak(DateTime Utc, double UsPerCm);
