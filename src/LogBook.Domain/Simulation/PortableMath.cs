namespace LogBook.Domain.Simulation;

/// <summary>Exponential and logarithm from additions and multiplications alone, so that the last bit is the same on every machine.</summary>
internal static class PortableMath
{
    private const double Ln2 = 0.693147180559945309417;
    private const double Ln2High = 6.93147180369123816490e-01;
    private const double Ln2Low = 1.90821492927058770002e-10;

    /// <summary>Powers of e.</summary>
    public static double Exp(double x)
    {
        if (x < -700)
        {
            return 0;
        }

        var n = Math.Floor((x / Ln2) + 0.5);
        var r = x - (n * Ln2High) - (n * Ln2Low);
        var sum = 1.0;
        for (var k = 15; k >= 1; k--)
        {
            sum = 1 + (r * sum / k);
        }

        return Math.ScaleB(sum, (int)n);
    }

    /// <summary>Natural logarithm of a positive number.</summary>
    public static double Log(double x)
    {
        var exponent = Math.ILogB(x);
        var m = Math.ScaleB(x, -exponent);
        if (m > 1.4142135623730951)
        {
            m /= 2;
            exponent++;
        }

        // ln m = 2 artanh((m-1)/(m+1)), and |(m-1)/(m+1)| <= 0.172 converges in few terms.
        var z = (m - 1) / (m + 1);
        var zz = z * z;
        var sum = 0.0;
        for (var k = 23; k >= 1; k -= 2)
        {
            sum = (1.0 / k) + (zz * sum);
        }

        return (exponent * Ln2) + (2 * z * sum);
    }

    /// <summary>(1 - (1 - e^-x)/x)/x for x of 0 or more: the second integral of a washout, without cancellation near 0.</summary>
    public static double WashoutIntegral(double x)
    {
        if (x > 1)
        {
            return (1 - ((1 - Exp(-x)) / x)) / x;
        }

        // As many terms as the last bit asks for: most steps of a simulation are short.
        var sum = 0.0;
        for (var n = x < 1e-3 ? 6 : x < 0.05 ? 9 : 18; n >= 1; n--)
        {
            sum = (1 - (x * sum)) / (n + 1);
        }

        return sum;
    }
}
