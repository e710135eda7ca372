using LogBook.Domain.Exchange;

namespace LogBook.Domain.Visits;

/// <summary>Something that happened to the plant.</summary>
public sealed record VisitEvent
{
    /// <summary>What.</summary>
    public required EventType Type { get; init; }

    /// <summary>Code of the part.</summary>
    public string? Of { get; init; }

    /// <summary>When.</summary>
    public Moment? At { get; init; }

    /// <summary>Water let out or in, L.</summary>
    public double? Litres { get; init; }

    /// <summary>Who.</summary>
    public string? By { get; init; }

    /// <summary>In words.</summary>
    public string? Note { get; init; }
}
