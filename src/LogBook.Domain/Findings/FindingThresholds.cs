using LogBook.Domain.Languages;

namespace LogBook.Domain.Findings;

/// <summary>
/// Default thresholds of every rule in one table, each with its basis; an installation, a system or a product may carry its own
/// by <c>with</c>.
/// </summary>
public sealed record FindingThresholds
{
    private static readonly Text Common = new("common practice", "práctica habitual", "prática usual");
    private static readonly Text MassBalance = new("from the mass balance", "del balance de masa", "do balanço de massa");

    /// <summary>The defaults.</summary>
    public static FindingThresholds Default { get; } = new();

    /// <summary>Probe error, % of the reference.</summary>
    public Threshold ProbeErrorPercent { get; init; } = new(5, Common);

    /// <summary>Advance of a register over what is expected below which it counts as stopped, %.</summary>
    public Threshold MeterAdvancePercent { get; init; } = new(5, MassBalance);
}
