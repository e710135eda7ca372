using LogBook.Domain.Exchange;

namespace LogBook.Domain.Sites;

/// <summary>One check of an instrument in a standard.</summary>
public sealed record InstrumentCheck
{
    /// <summary>When.</summary>
    public required Moment At { get; init; }

    /// <summary>Value of the standard.</summary>
    public required double Standard { get; init; }

    /// <summary>What the instrument said.</summary>
    public required double Read { get; init; }

    /// <summary>UCUM unit of both.</summary>
    public required string Unit { get; init; }

    /// <summary>Lot of the standard.</summary>
    public string? StandardLot { get; init; }
}
