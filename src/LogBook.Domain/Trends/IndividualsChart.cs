using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Limits of a chart of individual values and moving ranges.</summary>
/// <param name="Centre">Mean of the values.</param>
/// <param name="MeanMovingRange">Mean of the differences of neighbours.</param>
/// <param name="Sigma">Mean moving range / 1.128.</param>
/// <remarks>Reference: 05-probe-drift.csv, imr_* (NIST/SEMATECH e-Handbook 6.3.2.2).</remarks>
public sealed record IndividualsChart(double Centre, double MeanMovingRange, double Sigma)
{
    private const double D2 = 1.128;
    private const double D4 = 3.267;

    /// <summary>Centre + 3 sigma.</summary>
    public double UpperLimit => Centre + (3 * Sigma);

    /// <summary>Centre − 3 sigma.</summary>
    public double LowerLimit => Centre - (3 * Sigma);

    /// <summary>Upper limit of the moving range, 3.267 times its mean.</summary>
    public double MovingRangeUpperLimit => D4 * MeanMovingRange;

    /// <summary>Works out the limits.</summary>
    /// <param name="values">In order, two at least; independent errors.</param>
    /// <returns>The limits; none with fewer than two values.</returns>
    public static Computed<IndividualsChart> Of(IReadOnlyList<double> values)
    {
        if (Series.Fault(values, values, 2) is { } fault)
        {
            return Computed<IndividualsChart>.None(fault);
        }

        var range = MovingRanges(values).Average();
        return Computed<IndividualsChart>.Of(new IndividualsChart(values.Average(), range, range / D2));
    }

    /// <summary>Differences of neighbours, without their sign.</summary>
    /// <param name="values">In order.</param>
    /// <returns>In the unit of the values, one fewer than they are; empty for fewer than two.</returns>
    /// <remarks>Reference: 05-control-chart-data.csv, individuals_MR.</remarks>
    public static IReadOnlyList<double> MovingRanges(IReadOnlyList<double> values) =>
        [.. values.Zip(values.Skip(1), (one, next) => Math.Abs(next - one))];

    /// <summary>How far a value is from the centre, in sigma.</summary>
    /// <param name="value">Unit of the chart.</param>
    /// <returns>z; none when all values were alike.</returns>
    public Computed<double> Z(double value) => Sigma > 0
        ? Computed<double>.Of((value - Centre) / Sigma)
        : Computed<double>.None(TrendReasons.NoSpread);
}
