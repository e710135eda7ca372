using LogBook.Domain.Assessments;
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

    /// <summary>The difference as a figure that says what went in; null where there is none.</summary>
    public HistoryFigure? DifferenceFigure => Difference is { } difference && Latest is [{ } first, { } second]
        ? new HistoryFigure(
            FigureCodes.Difference,
            "",
            first.Visit,
            null,
            first.To > second.To ? first.To : second.To,
            difference,
            [],
            [InputOf("first", first.Estimate!), InputOf("second", second.Estimate!)])
        : null;

    /// <summary>Whether the difference is larger than its expanded uncertainty (k = 2).</summary>
    public bool IsClear => Difference is { IsClearOfZero: true };

    private static FigureInput InputOf(string name, Estimate estimate) => new(name, estimate.Value, estimate.Unit, estimate.StandardUncertainty);
}
