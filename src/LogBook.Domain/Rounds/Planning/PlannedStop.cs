namespace LogBook.Domain.Rounds.Planning;

/// <summary>A stop of a day's plan.</summary>
/// <param name="Site">Code of the site.</param>
/// <param name="Person">Code of the technician who goes.</param>
public sealed record PlannedStop(string Site, string Person)
{
    /// <summary>Code of who had the stop and handed it over; null where nobody did, and where somebody else decided who goes.</summary>
    public string? HandedBy { get; init; }
}
