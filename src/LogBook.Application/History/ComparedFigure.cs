using LogBook.Domain.Estimates;

namespace LogBook.Application.History;

/// <summary>The latest value of one figure in each system that is compared.</summary>
/// <param name="Key">Which figure.</param>
/// <param name="Latest">In the order of the systems; null where a system has none in the period.</param>
public sealed record ComparedFigure(string Key, IReadOnlyList<HistoryFigure?> Latest)
{
    /// <summary>
    /// First minus second, where exactly two systems are compared and both have it. Their uncertainties are taken as independent: what the
    /// same hand meter brings into both is no longer known apart, so this one may be too wide.
    /// </summary>
    public Estimate? Difference => Latest is [{ Estimate: { } first }, { Estimate: { } second }] ? first.Minus(second) : null;

    /// <summary>Whether the difference is larger than its expanded uncertainty (k = 2).</summary>
    public bool IsClear => Difference is { IsClearOfZero: true };
}
