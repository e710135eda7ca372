namespace LogBook.Application.DueLists;

/// <summary>A site with its clock.</summary>
/// <param name="Code">Code.</param>
/// <param name="Name">Name.</param>
/// <param name="Customer">Name of the customer.</param>
/// <param name="AssignedTo">Technician whose round it is on.</param>
/// <param name="Systems">Number of systems.</param>
/// <param name="LastVisit">Day of the last visit that counts, at the site; null before the first.</param>
/// <param name="DaysSince">Days since then.</param>
/// <param name="EveryDays">Agreed interval.</param>
/// <param name="DueOn">Day on which the next visit is due, by the interval since the last.</param>
/// <param name="DueInDays">Days until then; negative when it has passed.</param>
/// <param name="IsLate">More over the interval than is usual.</param>
/// <param name="Open">Open findings; zero for a viewer who may not see findings.</param>
public sealed record SiteDueRow(
    string Code,
    string Name,
    string Customer,
    string? AssignedTo,
    int Systems,
    DateOnly? LastVisit,
    int? DaysSince,
    double? EveryDays,
    DateOnly? DueOn,
    int? DueInDays,
    bool IsLate,
    SeverityCounts Open);
