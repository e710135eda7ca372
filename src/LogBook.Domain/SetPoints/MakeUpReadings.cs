using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;

namespace LogBook.Domain.SetPoints;

/// <summary>The last readings of one test of the make-up water.</summary>
/// <remarks>
/// The 90th percentile is the one of definition 7 of Hyndman and Fan, The American Statistician 50 (1996) 361: linear between the ordered
/// readings, (n − 1) p + 1. Of twelve readings one may lie above it.
/// </remarks>
public sealed class MakeUpReadings
{
    /// <summary>How many readings count.</summary>
    public const int Most = 12;

    /// <summary>Share of the readings that lie at or below what the ions are counted with.</summary>
    public const double Share = 0.9;

    private readonly double[] _sorted;

    /// <summary>Takes readings.</summary>
    /// <param name="newestFirst">Finite, not negative; those beyond the twelfth are left out.</param>
    public MakeUpReadings(IEnumerable<double> newestFirst)
    {
        _sorted = [.. newestFirst.Where(value => double.IsFinite(value) && value >= 0).Take(Most)];
        Array.Sort(_sorted);
    }

    /// <summary>Readings that count.</summary>
    public int Count => _sorted.Length;

    /// <summary>The reading below which a share of them lies.</summary>
    /// <param name="share">0 to 1.</param>
    /// <returns>In the unit of the readings; none without readings.</returns>
    public Computed<double> Percentile(double share)
    {
        if (_sorted.Length == 0 || share is not (>= 0 and <= 1))
        {
            return Computed<double>.None(SetPointReasons.NoMakeUp);
        }

        var at = (_sorted.Length - 1) * share;
        var below = (int)Math.Floor(at);
        var above = Math.Min(below + 1, _sorted.Length - 1);
        return Computed<double>.Of(_sorted[below] + ((at - below) * (_sorted[above] - _sorted[below])));
    }

    /// <summary>The 90th percentile with its uncertainty: that of a reading, or of the readings' own scatter over their number.</summary>
    /// <param name="unit">UCUM unit of the readings.</param>
    /// <param name="leastShare">Least relative standard uncertainty (a single grab of make-up can be 10 % off).</param>
    /// <returns>None without readings.</returns>
    public Computed<Estimate> High(string unit, double leastShare = 0.03) => Of(Share, unit, leastShare);

    /// <summary>The median with its uncertainty.</summary>
    /// <param name="unit">UCUM unit of the readings.</param>
    /// <param name="leastShare">Least relative standard uncertainty.</param>
    /// <returns>None without readings.</returns>
    public Computed<Estimate> Middle(string unit, double leastShare = 0.03) => Of(0.5, unit, leastShare);

    // A single grab can be 10 % off (findings, rule 5); of several the mean scatters less.
    private Computed<Estimate> Of(double share, string unit, double leastShare) => Percentile(share).Map(value =>
    {
        var mean = _sorted.Average();
        var spread = _sorted.Length < 3 ? 0.1 * mean : Math.Sqrt(_sorted.Sum(one => (one - mean) * (one - mean)) / (_sorted.Length - 1));
        return new Estimate(value, unit, Math.Max(leastShare * value, spread / Math.Sqrt(_sorted.Length)));
    });
}
