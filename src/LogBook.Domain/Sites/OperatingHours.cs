using LogBook.Domain.Programmes;

namespace LogBook.Domain.Sites;

/// <summary>Hours on some days of the week; 00:00 to 24:00 is the whole day, a "to" before "from" runs past midnight.</summary>
public sealed record OperatingHours
{
    /// <summary>Days it holds for.</summary>
    public IReadOnlyList<Weekday> Days { get; init => field = value ?? []; } = [];

    /// <summary>Start, HH:MM local time.</summary>
    public required string From { get; init; }

    /// <summary>End, HH:MM local time, 24:00 allowed.</summary>
    public required string To { get; init; }
}
