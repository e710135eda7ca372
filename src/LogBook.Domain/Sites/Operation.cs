namespace LogBook.Domain.Sites;

/// <summary>When the plant runs.</summary>
public sealed record Operation
{
    /// <summary>Hours of a usual week.</summary>
    public IReadOnlyList<OperatingHours> Week { get; init => field = value ?? []; } = [];

    /// <summary>Parts of the year in which it runs; all year when empty.</summary>
    public IReadOnlyList<Season> Seasons { get; init => field = value ?? []; } = [];

    /// <summary>Known stops.</summary>
    public IReadOnlyList<Stop> Stops { get; init => field = value ?? []; } = [];
}
