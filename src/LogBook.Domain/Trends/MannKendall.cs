using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Mann-Kendall test for a trend of any shape.</summary>
/// <param name="S">Rising pairs minus falling pairs.</param>
/// <param name="Variance">Variance of S with the tie correction.</param>
/// <param name="Z">Continuity-corrected normal score; 0 when S is 0.</param>
/// <param name="NormalPValue">Two-sided, normal approximation: for ten points or more.</param>
/// <param name="ExactPValue">Two-sided, exact distribution; null with ties or more than 60 points.</param>
/// <remarks>Fewer than five points cannot reach 5 %. Reference: 05-probe-drift.csv, mann_kendall_*.</remarks>
public sealed record MannKendall(int S, double Variance, double Z, double NormalPValue, double? ExactPValue)
{
    private const int MostForExact = 60;

    /// <summary>The exact probability where there is one, else the approximation.</summary>
    public double PValue => ExactPValue ?? NormalPValue;

    /// <summary>Runs the test.</summary>
    /// <param name="values">In order of time, no gaps needed between them.</param>
    /// <returns>The result; none with fewer than three values or all alike.</returns>
    public static Computed<MannKendall> Of(IReadOnlyList<double> values)
    {
        if (Series.Fault(values, values, 3) is { } fault)
        {
            return Computed<MannKendall>.None(fault);
        }

        var variance = Series.VarianceOfS([.. values]);
        if (variance <= 0)
        {
            return Computed<MannKendall>.None(TrendReasons.NoSpread);
        }

        var s = 0;
        for (var i = 0; i < values.Count; i++)
        {
            for (var j = i + 1; j < values.Count; j++)
            {
                s += Math.Sign(values[j] - values[i]);
            }
        }

        var z = (s - Math.Sign(s)) / Math.Sqrt(variance);
        var hasTies = values.Distinct().Count() < values.Count;
        double? exact = hasTies || values.Count > MostForExact ? null : ExactTwoSided(values.Count, s);
        return Computed<MannKendall>.Of(new MannKendall(s, variance, z, SpecialFunctions.NormalTwoSided(z), exact));
    }

    // Number of orders with k falling pairs, built up value by value (each new value falls before 0 … n−1 others), as probabilities.
    private static double ExactTwoSided(int n, int s)
    {
        double[] chance = [1];
        for (var size = 2; size <= n; size++)
        {
            var next = new double[(size * (size - 1) / 2) + 1];
            for (var inversions = 0; inversions < chance.Length; inversions++)
            {
                for (var added = 0; added < size; added++)
                {
                    next[inversions + added] += chance[inversions] / size;
                }
            }

            chance = next;
        }

        var pairs = n * (n - 1) / 2;
        var falling = (pairs - Math.Abs(s)) / 2;
        return Math.Min(1, 2 * chance.Take(falling + 1).Sum());
    }
}
