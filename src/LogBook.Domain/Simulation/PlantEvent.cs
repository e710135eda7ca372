namespace LogBook.Domain.Simulation;

/// <summary>Something the simulated controller or plant did.</summary>
/// <param name="Utc">When, UTC.</param>
/// <param name="What">What happened.</param>
/// <param name="Of">Code of the output or part.</param>
/// <param name="UsPerCm">True conductivity at that moment, µS/cm.</param>
public sealed record PlantEvent(DateTime Utc, PlantEventKind What, string Of, double UsPerCm);
