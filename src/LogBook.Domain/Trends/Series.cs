using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Trends;

/// <summary>Checks shared by all trends.</summary>
internal static class Series
{
    internal static Reason? Fault(IReadOnlyList<double> x, IReadOnlyList<double> y, int fewest)
    {
        if (x.Count != y.Count || !x.All(double.IsFinite) || !y.All(double.IsFinite))
        {
            return TrendReasons.SeriesUnsound;
        }

        return x.Count < fewest ? TrendReasons.TooFewPoints : null;
    }

    internal static double Median(IEnumerable<double> values)
    {
        var sorted = values.Order().ToList();
        var middle = sorted.Count / 2;
        return sorted.Count % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
    }

    /// <summary>Variance of Kendall's S with ties: (n(n−1)(2n+5) − Σ t(t−1)(2t+5))/18.</summary>
    internal static double VarianceOfS(IReadOnlyCollection<double> values)
    {
        static double Term(double n) => n * (n - 1) * ((2 * n) + 5);
        return (Term(values.Count) - values.GroupBy(value => value).Sum(group => Term(group.Count()))) / 18;
    }
}
