namespace LogBook.Application.Search;

/// <summary>One hit.</summary>
/// <param name="Kind">What it is.</param>
/// <param name="Code">Its code; for a visit its id.</param>
/// <param name="Name">Its name; for a visit the technician's code.</param>
/// <param name="Site">Code of the site, for systems and visits.</param>
/// <param name="Day">Day of a visit.</param>
public sealed record SearchHit(SearchHitKind Kind, string Code, string Name, string? Site = null, DateOnly? Day = null);
