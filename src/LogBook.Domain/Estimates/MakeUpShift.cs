using LogBook.Domain.Assessments;

namespace LogBook.Domain.Estimates;

/// <summary>One test of the make-up water against the system's own normal.</summary>
/// <param name="Test">Code of the test.</param>
/// <param name="Now">The reading.</param>
/// <param name="Normal">Median of the own normal.</param>
/// <param name="Spread">Standard deviation of the own normal, at least the reading's own uncertainty.</param>
/// <param name="IsFull">Whether the normal rests on as many readings as it may hold.</param>
/// <param name="IsSoftenedHardness">Whether it is the hardness of softened water.</param>
/// <param name="Recent">Median of the last three normal readings: a season moves it along, a new source does not.</param>
public sealed record MakeUpShift(string Test, Estimate Now, double Normal, double Spread, bool IsFull, bool IsSoftenedHardness, double Recent)
{
    /// <summary>The readings that the own normal rests on, oldest first, each named by its day; empty before there is an own normal.</summary>
    public IReadOnlyList<FigureInput> Own { get; init; } = [];

    /// <summary>Difference to the normal, % of it; to the nearer of the whole and the recent normal.</summary>
    public double Percent
    {
        get
        {
            var (whole, recent) = ((Now.Value / Normal) - 1, (Now.Value / Recent) - 1);
            return whole * recent <= 0 ? 0 : 100 * (Math.Abs(whole) < Math.Abs(recent) ? whole : recent);
        }
    }

    /// <summary>Difference to the normal in standard deviations of its spread.</summary>
    public double Sigmas => (Now.Value - Normal) / Spread;
}
