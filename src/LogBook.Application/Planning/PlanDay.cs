using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.Planning;

/// <summary>A day of the plan.</summary>
/// <param name="Day">The day.</param>
/// <param name="Version">Version of its record; 0 where nothing is planned.</param>
/// <param name="IsOver">Whether it can no longer be changed.</param>
/// <param name="People">People with stops, by name.</param>
public sealed record PlanDay(DateOnly Day, int Version, bool IsOver, IReadOnlyList<PersonDay> People)
{
    /// <summary>Stops that the viewer has handed over and that still stand with who took them.</summary>
    public IReadOnlyList<PlannedStop> HandedAway { get; init; } = [];
}
