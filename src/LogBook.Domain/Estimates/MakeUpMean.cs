using LogBook.Domain.Outcomes;
using LogBook.Domain.Programmes;

namespace LogBook.Domain.Estimates;

/// <summary>
/// Make-up water that fed the present water: readings joined by straight lines, weighted by what the water of that time still makes
/// up of the present one, exp(−age × loss / volume).
/// </summary>
/// <remarks>
/// A single grab of make-up can be 10 % off, so the uncertainty is at least 3 % and at least the site's own spread over twelve readings
/// (by moving range, so that the season does not count as spread). Findings, rule 5.
/// </remarks>
public static class MakeUpMean
{
    private const int Readings = 12;
    private const double OldestDays = 120;

    /// <summary>The fading mean of one test of the make-up water.</summary>
    /// <param name="visit">Visit whose water it fed.</param>
    /// <param name="test">Code of the test.</param>
    /// <returns>The mean, or that the make-up was not measured within 120 days.</returns>
    public static Computed<Estimate> Of(VisitFacts visit, string test)
    {
        Span<double> ages = stackalloc double[Readings];
        var readings = new List<Estimate>(Readings);
        for (var earlier = visit; earlier is not null && readings.Count < Readings; earlier = earlier.Previous)
        {
            var days = (visit.Visit.At - earlier.Visit.At).TotalDays;
            if (days > OldestDays)
            {
                break;
            }

            if (earlier.MakeUpReading(test) is { } reading)
            {
                ages[readings.Count] = days;
                readings.Add(reading.Value);
            }
        }

        if (readings.Count == 0)
        {
            return Computed<Estimate>.None(VisitReasons.MakeUpNotMeasured);
        }

        Span<double> weights = stackalloc double[readings.Count];
        Weigh(ages[..readings.Count], visit.FadingDays, weights);
        var mean = Estimate.WeightedSum(readings, weights);
        Span<double> values = stackalloc double[readings.Count];
        for (var i = 0; i < values.Length; i++)
        {
            values[i] = readings[i].Value;
        }

        var average = Statistics.Mean(values);
        var share = Math.Max(
            visit.History.Firm.Engine.Uncertainties.Share(UncertaintyCodes.MakeUpMean),
            average > 0 ? Statistics.SpreadByMovingRange(values) / average : 0);
        return Computed<Estimate>.Of(mean.WithRandom(Math.Max(mean.Random, share * mean.Value)));
    }

    /// <summary>Weights of readings, newest first, that join them by straight lines and let the past fade.</summary>
    /// <param name="ages">Days before the visit, rising.</param>
    /// <param name="fading">Days in which a water fades to 1/e, above zero.</param>
    /// <returns>Weights that add up to one. Before the oldest and after the newest reading its value is taken as constant.</returns>
    internal static IReadOnlyList<double> Weights(IReadOnlyList<double> ages, double fading)
    {
        var weights = new double[ages.Count];
        Weigh([.. ages], fading, weights);
        return weights;
    }

    private static void Weigh(ReadOnlySpan<double> ages, double fading, Span<double> weights)
    {
        weights.Clear();
        var left = Math.Exp(-ages[0] / fading);
        weights[0] += 1 - left;
        for (var i = 0; i + 1 < ages.Length; i++)
        {
            // Over one gap the weight exp(-a) da is shared between both ends by their nearness.
            var (a, b) = (ages[i] / fading, ages[i + 1] / fading);
            var leftThen = Math.Exp(-b);
            var all = left - leftThen;
            var older = b - a < 1e-9 ? all / 2 : (all / (b - a)) - leftThen;
            left = leftThen;
            weights[i] += all - older;
            weights[i + 1] += older;
        }

        weights[^1] += left;
    }
}
