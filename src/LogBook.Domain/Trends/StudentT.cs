namespace LogBook.Domain.Trends;

/// <summary>Student's t distribution.</summary>
/// <remarks>Reference: 05-probe-drift.csv, t_975, norris_t975, drift_p_value.</remarks>
public static class StudentT
{
    private const double UsualConfidence = 0.95;
    private const int MostUsual = 300;

    // Every line of every visit asks for one of these.
    private static readonly Lazy<double>[] Usual =
        [.. Enumerable.Range(0, MostUsual).Select(degrees => new Lazy<double>(() => Quantile(UsualConfidence, degrees)))];

    /// <summary>Two-sided quantile: |t| is exceeded with probability 1 − <paramref name="confidence"/>.</summary>
    /// <param name="confidence">Between 0 and 1, as 0.95.</param>
    /// <param name="degreesOfFreedom">1 or more.</param>
    /// <returns>t; 2.776 for 95 % and 4 degrees of freedom.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Outside those ranges.</exception>
    public static double TwoSided(double confidence, int degreesOfFreedom)
    {
        if (!(confidence > 0 && confidence < 1))
        {
            throw new ArgumentOutOfRangeException(nameof(confidence), confidence, "Between 0 and 1.");
        }

        ArgumentOutOfRangeException.ThrowIfLessThan(degreesOfFreedom, 1);
        return confidence == UsualConfidence && degreesOfFreedom < Usual.Length
            ? Usual[degreesOfFreedom].Value
            : Quantile(confidence, degreesOfFreedom);
    }

    private static double Quantile(double confidence, int degreesOfFreedom) =>
        SpecialFunctions.Bisect(t => 1 - PValue(t, degreesOfFreedom), confidence, 0, 1e9);

    /// <summary>Two-sided probability of a value as far from zero.</summary>
    /// <param name="t">Any finite value.</param>
    /// <param name="degreesOfFreedom">1 or more.</param>
    /// <returns>0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">Less than one degree of freedom.</exception>
    public static double PValue(double t, int degreesOfFreedom)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(degreesOfFreedom, 1);
        return SpecialFunctions.IncompleteBeta(degreesOfFreedom / 2.0, 0.5, degreesOfFreedom / (degreesOfFreedom + (t * t)));
    }
}
