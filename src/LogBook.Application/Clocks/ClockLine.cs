using LogBook.Domain.Clocks;
using LogBook.Domain.Programmes;

namespace LogBook.Application.Clocks;

/// <summary>One clock of the list.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="SiteName">Its name.</param>
/// <param name="TimeZone">Its zone.</param>
/// <param name="AssignedTo">Technician whose round it is on.</param>
/// <param name="System">Code of the system; null for what concerns the whole site.</param>
/// <param name="SystemName">Its name.</param>
/// <param name="Clock">The clock.</param>
/// <param name="Rule">Rule in the version it is judged by; null for what the contract says.</param>
/// <param name="Standing">Where it stands now.</param>
/// <param name="IsIdle">Whether the plant does not run today, by its seasons and known stops.</param>
public sealed record ClockLine(
    string Site,
    string SiteName,
    string TimeZone,
    string? AssignedTo,
    string? System,
    string? SystemName,
    RunningClock Clock,
    Rule? Rule,
    ClockStanding Standing,
    bool IsIdle)
{
    /// <summary>Day of the month by which a summary is promised; null for hours, and for the other kinds.</summary>
    public DateOnly? PromisedBy { get; init; }
}
