using LogBook.Domain.Rounds.Planning;

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
    SeverityCounts Open)
{
    /// <summary>All that makes the site due, the most urgent first; empty for a viewer who is not of the firm, and where nothing runs.</summary>
    public IReadOnlyList<DueReason> Reasons { get; init; } = [];

    /// <summary>Minutes that a visit needs; null where it was not asked for.</summary>
    public VisitNeed? Need { get; init; }

    /// <summary>Codes of its systems by their keys in the database.</summary>
    internal IReadOnlyDictionary<int, string> SystemCodes { get; init; } = new Dictionary<int, string>();

    /// <summary>Day at the site.</summary>
    public DateOnly Today { get; init; }

    /// <summary>Day of the most urgent clock; null where none runs.</summary>
    public DateOnly? UrgentOn => Reasons.Count > 0 ? Reasons[0].Day : DueOn;

    /// <summary>Days until then; negative when it has passed.</summary>
    public int? UrgentInDays => UrgentOn?.DayNumber - Today.DayNumber;

    /// <summary>How the site stands: as the worst of its clocks does.</summary>
    public DueStanding Standing => Reasons.Count == 0 ? DueStanding.Later : Reasons.Min(reason => reason.On(Today));
}
