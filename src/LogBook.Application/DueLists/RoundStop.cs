namespace LogBook.Application.DueLists;

/// <summary>One site of the round.</summary>
/// <param name="Site">The site with its clock.</param>
/// <param name="OwnLast">Day of the person's own last visit; null when never or for the whole firm's round.</param>
/// <param name="Since">What changed since then, latest first.</param>
public sealed record RoundStop(SiteDueRow Site, DateOnly? OwnLast, IReadOnlyList<SinceEntry> Since)
{
    /// <summary>Code of the person who is planned to go there today; null where nobody is.</summary>
    public string? PlannedFor { get; init; }

    /// <summary>Code of the technician who is away and in whose place it stands on this round; null for the own sites.</summary>
    public string? InPlaceOf { get; init; }
}
