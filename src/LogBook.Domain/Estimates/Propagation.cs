namespace LogBook.Domain.Estimates;

/// <summary>First-order propagation through a function of four estimates by central differences.</summary>
/// <remarks>JCGM 100:2008, 5.1.3 note 2: half the difference at ± one standard uncertainty. Parts of equal name are not followed.</remarks>
internal static class Propagation
{
    /// <summary>Value and uncertainty of a function.</summary>
    public static Estimate Of(Func<double, double, double, double, double> of, Estimate a, Estimate b, Estimate c, Estimate d, string unit)
    {
        double[] at = [a.Value, b.Value, c.Value, d.Value];
        double[] u = [a.StandardUncertainty, b.StandardUncertainty, c.StandardUncertainty, d.StandardUncertainty];
        var sum = 0.0;
        for (var i = 0; i < at.Length; i++)
        {
            var (low, high) = ((double[])at.Clone(), (double[])at.Clone());
            low[i] = Math.Max(low[i] - u[i], 1e-9);
            high[i] += u[i];
            var half = (of(high[0], high[1], high[2], high[3]) - of(low[0], low[1], low[2], low[3])) / 2;
            sum += half * half;
        }

        return new Estimate(of(at[0], at[1], at[2], at[3]), unit, Math.Sqrt(sum));
    }

    /// <summary>Value and uncertainty of a function of any number of estimates that may have no value at their ends.</summary>
    /// <returns>None where there is no value at the estimates themselves; an input at whose ends there is none adds what the other end tells.</returns>
    public static Outcomes.Computed<Estimate> Of(Func<double[], Outcomes.Computed<double>> of, IReadOnlyList<Estimate> inputs, string unit)
    {
        double[] at = [.. inputs.Select(input => input.Value)];
        var middle = of(at);
        if (!middle.HasValue)
        {
            return middle.WithoutValue<Estimate>();
        }

        var sum = 0.0;
        for (var i = 0; i < at.Length; i++)
        {
            var u = inputs[i].StandardUncertainty;
            if (u == 0)
            {
                continue;
            }

            double? Moved(double by)
            {
                var moved = (double[])at.Clone();
                moved[i] = Math.Max(moved[i] + by, Math.Min(at[i], 1e-9));
                return of(moved) is { HasValue: true, Value: var value } ? value : null;
            }

            var half = (Moved(u), Moved(-u)) switch
            {
                ({ } high, { } low) => (high - low) / 2,
                ({ } high, null) => high - middle.Value,
                (null, { } low) => middle.Value - low,
                _ => 0,
            };
            sum += half * half;
        }

        return Outcomes.Computed<Estimate>.Of(new Estimate(middle.Value, unit, Math.Sqrt(sum)));
    }
}
