namespace LogBook.Domain.Findings;

/// <summary>The rules, in the order of the exchange format.</summary>
public static class FindingRules
{
    /// <summary>Rules for open recirculating systems.</summary>
    public static IReadOnlyList<IFindingRule> All { get; } =
    [
        new SwitchNotAutomatic(),
    ];

    /// <summary>Rules for systems that are only recorded: tests and dates, no balance.</summary>
    public static IReadOnlyList<IFindingRule> ForRecordsOnly { get; } = [];
}
