namespace LogBook.Domain.Simulation;

/// <summary>The water at a full hour.</summary>
/// <param name="Utc">When.</param>
/// <param name="UsPerCm">Conductivity.</param>
/// <param name="MgPerL">Level of each product, mg/L as product, losses by water alone.</param>
public sealed record LookAheadHour(DateTime Utc, double UsPerCm, IReadOnlyList<double> MgPerL);
