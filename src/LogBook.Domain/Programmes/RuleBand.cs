using LogBook.Domain.Findings;

namespace LogBook.Domain.Programmes;

/// <summary>One band of a rule: from a value on, how soon and what to do.</summary>
public sealed record RuleBand
{
    /// <summary>Lowest result of the band.</summary>
    public required double From { get; init; }

    /// <summary>UCUM unit.</summary>
    public required string Unit { get; init; }

    /// <summary>How soon.</summary>
    public required Severity Severity { get; init; }

    /// <summary>Hours from receipt of such a result within which the rule wants the authority told; null where it asks for none.</summary>
    public double? NotifyWithinHours { get; init; }

    /// <summary>
    /// Longest interval after such a result, days, shorter than that of the rule; it holds until a later sample's result lies below the bands
    /// that shorten it. Null where the result changes nothing about it.
    /// </summary>
    public double? EveryDays { get; init; }

    /// <summary>What the rule says to do.</summary>
    public string? Says { get; init; }
}
