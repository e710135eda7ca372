using LogBook.Domain.Languages;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>One reason to go to a site, with its day.</summary>
/// <param name="Kind">What makes it due.</param>
/// <param name="Day">Day by which somebody should be there, in the site's zone: the last allowed one of a duty, the earliest of a drum, the first of a finding.</param>
/// <param name="System">Code of the system; null for the whole site.</param>
/// <param name="Words">The reason as a person would say it.</param>
/// <param name="IsLate">Whether it is later than is usual.</param>
public sealed record DueReason(DueKind Kind, DateOnly Day, string? System, Said Words, bool IsLate)
{
    /// <summary>Days counted as soon: today's round and tomorrow's are packed together.</summary>
    public const int SoonDays = 2;

    /// <summary>How it stands.</summary>
    /// <param name="today">Day at the site.</param>
    /// <returns>Late, due, soon or later.</returns>
    public DueStanding On(DateOnly today) =>
        IsLate ? DueStanding.Late
        : Day <= today ? DueStanding.Due
        : Day.DayNumber - today.DayNumber <= SoonDays ? DueStanding.Soon
        : DueStanding.Later;
}
