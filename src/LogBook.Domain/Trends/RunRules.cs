namespace LogBook.Domain.Trends;

/// <summary>Finds the patterns of <see cref="RunRule"/>.</summary>
/// <remarks>
/// Inequalities are strict; a point exactly on the centre breaks a run. Reference: 05-probe-drift.csv, run_rule_first_index.
/// </remarks>
public static class RunRules
{
    /// <summary>Where a pattern is first complete.</summary>
    /// <param name="z">Distances from the centre in sigma, in order.</param>
    /// <param name="rule">Pattern.</param>
    /// <returns>Index from zero of the point that completes it; null when it does not occur.</returns>
    public static int? FirstIndex(IReadOnlyList<double> z, RunRule rule)
    {
        for (var i = 0; i < z.Count; i++)
        {
            if (IsComplete(z, i, rule))
            {
                return i;
            }
        }

        return null;
    }

    private static bool IsComplete(IReadOnlyList<double> z, int i, RunRule rule) => rule switch
    {
        RunRule.OneBeyondThree => Math.Abs(z[i]) > 3,
        RunRule.NineOnOneSide => Holds(z, i, 9, SameSide),
        RunRule.EightOnOneSide => Holds(z, i, 8, SameSide),
        RunRule.SixRisingOrFalling => Holds(z, i, 6, Monotone),
        RunRule.FourteenAlternating => Holds(z, i, 14, Alternating),
        RunRule.TwoOfThreeBeyondTwo => Holds(z, i, 3, last => SomeBeyond(last, 2, 2)),
        RunRule.FourOfFiveBeyondOne => Holds(z, i, 5, last => SomeBeyond(last, 4, 1)),
        RunRule.FifteenWithinOne => Holds(z, i, 15, last => last.All(value => Math.Abs(value) < 1)),
        RunRule.EightBeyondOne => Holds(z, i, 8, last => last.All(value => Math.Abs(value) > 1) && last.Any(value => value > 0) && last.Any(value => value < 0)),
        _ => throw new ArgumentOutOfRangeException(nameof(rule), rule, "Unknown rule."),
    };

    private static bool Holds(IReadOnlyList<double> z, int i, int count, Func<double[], bool> pattern) =>
        i + 1 >= count && pattern([.. z.Skip(i + 1 - count).Take(count)]);

    private static bool SameSide(double[] last) => last.All(value => value > 0) || last.All(value => value < 0);

    private static bool SomeBeyond(double[] last, int some, double sigma) =>
        last.Count(value => value > sigma) >= some || last.Count(value => value < -sigma) >= some;

    private static bool Monotone(double[] last) => Steps(last).All(step => step > 0) || Steps(last).All(step => step < 0);

    private static bool Alternating(double[] last)
    {
        var steps = Steps(last).ToList();
        return steps.Zip(steps.Skip(1)).All(pair => pair.First * pair.Second < 0);
    }

    private static IEnumerable<double> Steps(double[] last) => last.Zip(last.Skip(1), (one, next) => next - one);
}
