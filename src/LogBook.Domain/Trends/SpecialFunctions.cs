namespace LogBook.Domain.Trends;

/// <summary>Distribution functions behind the intervals; checked in tests against published quantiles.</summary>
/// <remarks>Continued fractions by the modified Lentz method; gamma by the Lanczos series (g = 7, nine terms).</remarks>
internal static class SpecialFunctions
{
    private const double Tiny = 1e-300;
    private const double Precision = 1e-16;

    private static readonly double[] Lanczos =
    [
        0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
        12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
    ];

    /// <summary>ln Γ(x), x &gt; 0.</summary>
    internal static double LogGamma(double x)
    {
        if (x < 0.5)
        {
            return Math.Log(Math.PI / Math.Sin(Math.PI * x)) - LogGamma(1 - x);
        }

        var sum = Lanczos[0];
        for (var i = 1; i < Lanczos.Length; i++)
        {
            sum += Lanczos[i] / (x - 1 + i);
        }

        var t = x + 6.5;
        return (0.5 * Math.Log(2 * Math.PI)) + ((x - 0.5) * Math.Log(t)) - t + Math.Log(sum);
    }

    /// <summary>Regularized incomplete beta I_x(a, b).</summary>
    internal static double IncompleteBeta(double a, double b, double x)
    {
        if (x <= 0)
        {
            return 0;
        }

        if (x >= 1)
        {
            return 1;
        }

        var front = Math.Exp(LogGamma(a + b) - LogGamma(a) - LogGamma(b) + (a * Math.Log(x)) + (b * Math.Log(1 - x)));
        return x < (a + 1) / (a + b + 2)
            ? front * BetaFraction(a, b, x) / a
            : 1 - (front * BetaFraction(b, a, 1 - x) / b);
    }

    /// <summary>Complementary error function.</summary>
    internal static double Erfc(double x)
    {
        if (x < 0)
        {
            return 2 - Erfc(-x);
        }

        return x < 1.5 ? 1 - ErfSeries(x) : ErfcFraction(x);
    }

    /// <summary>Probability that a standard normal number is beyond |z|, both sides.</summary>
    internal static double NormalTwoSided(double z) => Erfc(Math.Abs(z) / Math.Sqrt(2));

    /// <summary>Standard normal quantile by bisection on the distribution, p in (0, 1).</summary>
    internal static double NormalQuantile(double p) => Bisect(z => 0.5 * Erfc(-z / Math.Sqrt(2)), p, -40, 40);

    /// <summary>Point at which a rising function reaches a value.</summary>
    internal static double Bisect(Func<double, double> rising, double target, double low, double high)
    {
        for (var i = 0; i < 2000; i++)
        {
            var middle = low + ((high - low) / 2);
            if (middle <= low || middle >= high)
            {
                break;
            }

            if (rising(middle) < target)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low + ((high - low) / 2);
    }

    private static double ErfSeries(double x)
    {
        var term = x;
        var sum = x;
        for (var n = 1; Math.Abs(term) > Precision * Math.Abs(sum); n++)
        {
            term *= -x * x / n;
            sum += term / ((2 * n) + 1);
        }

        return 2 / Math.Sqrt(Math.PI) * sum;
    }

    private static double ErfcFraction(double x)
    {
        // erfc(x) = exp(−x²)/√π · 1/(x + (1/2)/(x + 1/(x + (3/2)/(x + …)))), evaluated from the inside.
        var tail = x;
        for (var k = 120; k >= 1; k--)
        {
            tail = x + (k / 2.0 / tail);
        }

        return Math.Exp(-x * x) / Math.Sqrt(Math.PI) / tail;
    }

    private static double BetaFraction(double a, double b, double x)
    {
        var c = 1.0;
        var d = 1 / NotZero(1 - ((a + b) * x / (a + 1)));
        var result = d;
        for (var m = 1; m <= 10_000; m++)
        {
            var even = m * (b - m) * x / ((a + (2 * m) - 1) * (a + (2 * m)));
            d = 1 / NotZero(1 + (even * d));
            c = NotZero(1 + (even / c));
            result *= d * c;
            var odd = -(a + m) * (a + b + m) * x / ((a + (2 * m)) * (a + (2 * m) + 1));
            d = 1 / NotZero(1 + (odd * d));
            c = NotZero(1 + (odd / c));
            result *= d * c;
            if (Math.Abs((d * c) - 1) < Precision)
            {
                break;
            }
        }

        return result;
    }

    private static double NotZero(double value) => Math.Abs(value) < Tiny ? Tiny : value;
}
