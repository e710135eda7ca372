using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Planning;

/// <summary>A day's plan with its version.</summary>
/// <param name="Plan">The plan.</param>
/// <param name="Version">Version that was read; 0 where nothing has been planned yet.</param>
public sealed record KeptDay(DayPlan Plan, int Version);
