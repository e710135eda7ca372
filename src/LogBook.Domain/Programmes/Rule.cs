namespace LogBook.Domain.Programmes;

/// <summary>A rule of an authority or a contract, as dated data.</summary>
public sealed record Rule
{
    /// <summary>With "from", unique within the firm.</summary>
    public required string Code { get; init; }

    /// <summary>Name of the rule.</summary>
    public required string Name { get; init; }

    /// <summary>Where it holds.</summary>
    public string? Jurisdiction { get; init; }

    /// <summary>First day in force.</summary>
    public required DateOnly From { get; init; }

    /// <summary>Last day in force.</summary>
    public DateOnly? To { get; init; }

    /// <summary>Where it was read.</summary>
    public string? Source { get; init; }

    /// <summary>Test it asks for.</summary>
    public string? Test { get; init; }

    /// <summary>Task it asks for, instead of a test.</summary>
    public string? Task { get; init; }

    /// <summary>Event that starts it, instead of a test.</summary>
    public string? OnEvent { get; init; }

    /// <summary>Longest interval, days.</summary>
    public double? EveryDays { get; init; }

    /// <summary>Days allowed after the event.</summary>
    public double? WithinDays { get; init; }

    /// <summary>Days of grace.</summary>
    public double? GraceDays { get; init; }

    /// <summary>Whether only days of operation count.</summary>
    public bool? OperatingDaysOnly { get; init; }

    /// <summary>Earliest and latest day of a retest.</summary>
    public IReadOnlyList<double> RetestDays { get; init => field = value ?? []; } = [];

    /// <summary>Years for which its records must be kept, from the last entry; above zero. Null where the rule does not say.</summary>
    public double? KeepYears { get; init; }

    /// <summary>What a result means.</summary>
    public IReadOnlyList<RuleBand> Bands { get; init => field = value ?? []; } = [];
}
