namespace LogBook.Domain.Findings;

/// <summary>What the evidence on one system, instrument, lot or person shows.</summary>
public sealed record Finding
{
    /// <summary>Code of the site.</summary>
    public string? Site { get; init; }

    /// <summary>Code of the system.</summary>
    public string? System { get; init; }

    /// <summary>What it concerns.</summary>
    public About? About { get; init; }

    /// <summary>Kind, from the fixed list.</summary>
    public required string Kind { get; init; }

    /// <summary>How soon it wants somebody.</summary>
    public required Severity Severity { get; init; }

    /// <summary>First day on which the records allowed it.</summary>
    public required DateOnly FirstSeen { get; init; }

    /// <summary>Visit at which it was first seen.</summary>
    public Guid? FirstVisit { get; init; }

    /// <summary>Last day on which the evidence held.</summary>
    public required DateOnly LastSeen { get; init; }

    /// <summary>Where it stands.</summary>
    public required FindingState State { get; init; }

    /// <summary>Snoozed until.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>Why it was withdrawn or acknowledged.</summary>
    public string? Because { get; init; }

    /// <summary>Day it closed.</summary>
    public DateOnly? ClosedOn { get; init; }

    /// <summary>First day of its earlier self, when it came back.</summary>
    public DateOnly? Earlier { get; init; }

    /// <summary>One sentence, in the language asked for.</summary>
    public required string Text { get; init; }

    /// <summary>Figures with their intervals and limits.</summary>
    public IReadOnlyList<Evidence> Evidence { get; init => field = value ?? []; } = [];

    /// <summary>At most three causes, likeliest first.</summary>
    public IReadOnlyList<Suggestion> Suggests { get; init => field = value ?? []; } = [];

    /// <summary>What to look at next, cheapest first.</summary>
    public IReadOnlyList<string> LookAtNext { get; init => field = value ?? []; } = [];
}
