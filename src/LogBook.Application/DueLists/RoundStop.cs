using LogBook.Domain.Rounds.Planning;

namespace LogBook.Application.DueLists;

/// <summary>One site of the round.</summary>
/// <param name="Site">The site with its clock.</param>
/// <param name="OwnLast">Day of the person's own last visit; null when never or for the whole firm's round.</param>
/// <param name="Since">What changed since then, latest first.</param>
public sealed record RoundStop(SiteDueRow Site, DateOnly? OwnLast, IReadOnlyList<SinceEntry> Since)
{
    /// <summary>Code of the person who is planned to go there today; null where nobody is.</summary>
    public string? PlannedFor { get; init; }

    /// <summary>Version of the day's plan that was read, for a change of the order; 0 where there is none yet.</summary>
    public int PlanVersion { get; init; }

    /// <summary>Code of the technician in whose place it stands on this round; null for the own sites.</summary>
    public string? InPlaceOf { get; init; }

    /// <summary>Code of the colleague who goes today instead of the site's own technician; null where nobody does.</summary>
    public string? GoneTo { get; init; }

    /// <summary>Why the site cannot be visited today; null where it can.</summary>
    public DaysOff? Closed { get; init; }

    /// <summary>Day for which a visit is proposed where the site is closed on the day of its most urgent clock; else null.</summary>
    public DateOnly? GoOn { get; init; }
}
