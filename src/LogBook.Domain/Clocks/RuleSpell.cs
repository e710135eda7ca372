using LogBook.Domain.Programmes;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Clocks;

/// <summary>One thing that a rule asked for: from the day that set it running to the day on which it was done.</summary>
public sealed record RuleSpell
{
    /// <summary>What set it running.</summary>
    public required DutyKind Kind { get; init; }

    /// <summary>The version of the rule by which it is judged: the one whose time ran out, else the one in force at its end.</summary>
    public required Rule Rule { get; init; }

    /// <summary>Day from which it counts, in the site's zone.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>Last day in time, grace included.</summary>
    public required DateOnly DueBy { get; init; }

    /// <summary>Day on which it was done, as far as the records go; null where it was not.</summary>
    public DateOnly? DoneOn { get; init; }

    /// <summary>Where it stands at the end of the period looked at.</summary>
    public required RuleStanding Standing { get; init; }

    /// <summary>Days between the last day in time and the day it was done, or the end of the period; 0 unless missed.</summary>
    public int DaysOver { get; init; }

    /// <summary>Event that set it running; null for the other kinds.</summary>
    public EventType? Event { get; init; }
}
