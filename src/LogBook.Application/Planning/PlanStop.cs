using LogBook.Application.Data;
using LogBook.Application.DueLists;

namespace LogBook.Application.Planning;

/// <summary>A planned stop as the page shows it.</summary>
/// <param name="Code">Code of the site.</param>
/// <param name="Site">The site with its clocks; null where it is no longer served.</param>
/// <param name="Visit">State of the visit that was made there on the day; null while it is planned.</param>
public sealed record PlanStop(string Code, SiteDueRow? Site, VisitState? Visit)
{
    /// <summary>Minutes it needs; 0 where that is not known.</summary>
    public double Minutes => Site?.Need?.Minutes ?? 0;

    /// <summary>Minutes that were spent there on the day; null where no visit was made, or none tells when it ended.</summary>
    public double? Spent { get; init; }
}
