using LogBook.Domain.Exchange;

namespace LogBook.Domain.Visits;

/// <summary>One visit: everything that was read, done and said.</summary>
public sealed record Visit
{
    /// <summary>Version 7 identity, made where the visit is born.</summary>
    public required Guid Id { get; init; }

    /// <summary>Code of the site.</summary>
    public required string Site { get; init; }

    /// <summary>Code of the person who did it.</summary>
    public required string Technician { get; init; }

    /// <summary>Codes of others who helped.</summary>
    public IReadOnlyList<string> Also { get; init => field = value ?? []; } = [];

    /// <summary>Why; routine when absent.</summary>
    public VisitKind? Kind { get; init; }

    /// <summary>Why it stopped, or why it was amended.</summary>
    public string? Reason { get; init; }

    /// <summary>Arrival.</summary>
    public required Moment Arrived { get; init; }

    /// <summary>Departure.</summary>
    public Moment? Left { get; init; }

    /// <summary>When the entry was finished on the device.</summary>
    public Moment? EnteredAt { get; init; }

    /// <summary>1 when absent; an amendment has a higher one.</summary>
    public int? Version { get; init; }

    /// <summary>Version that this one replaces.</summary>
    public int? Amends { get; init; }

    /// <summary>Code of the person who amended.</summary>
    public string? AmendedBy { get; init; }

    /// <summary>When it was amended.</summary>
    public Moment? AmendedAt { get; init; }

    /// <summary>What was found and done, by system.</summary>
    public IReadOnlyList<VisitedSystem> Systems { get; init => field = value ?? []; } = [];

    /// <summary>Photos taken.</summary>
    public IReadOnlyList<Photo> Photos { get; init => field = value ?? []; } = [];

    /// <summary>What the customer is asked.</summary>
    public IReadOnlyList<Recommendation> Recommendations { get; init => field = value ?? []; } = [];

    /// <summary>Who signed, or why not.</summary>
    public IReadOnlyList<Signature> Signatures { get; init => field = value ?? []; } = [];

    /// <summary>Bottles taken.</summary>
    public IReadOnlyList<Sample> Samples { get; init => field = value ?? []; } = [];

    /// <summary>What was cleaned, in words.</summary>
    public string? Cleaning { get; init; }

    /// <summary>Anything else.</summary>
    public string? Notes { get; init; }
}
