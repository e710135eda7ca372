using LogBook.Domain.Clocks;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Rounds.Planning;

/// <summary>A clock that runs for a system and is not met yet.</summary>
/// <param name="Rule">Code of the rule.</param>
/// <param name="Name">Name of the rule in its version in force.</param>
/// <param name="Jurisdiction">Authority; null for a contract's or the firm's own rule.</param>
/// <param name="Kind">What set it running.</param>
/// <param name="Since">Day from which it counts, in the site's zone.</param>
/// <param name="LastDay">Last day that is still in time.</param>
public sealed record DutyAhead(string Rule, string Name, string? Jurisdiction, DutyKind Kind, DateOnly Since, DateOnly LastDay)
{
    /// <summary>Test it asks for; null for a task or an event.</summary>
    public string? Test { get; init; }

    /// <summary>Task it asks for.</summary>
    public string? Task { get; init; }

    /// <summary>Event that set it running.</summary>
    public EventType? Event { get; init; }

    /// <summary>First day on which a retest counts.</summary>
    public DateOnly? NotBefore { get; init; }
}
