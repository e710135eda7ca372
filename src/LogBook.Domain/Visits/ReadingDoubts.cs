using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Visits;

/// <summary>When a stored test result is so far from everything that a finding is made of it. At entry, where somebody can still look again, the band is narrower (<see cref="UsualBand"/>).</summary>
internal static class ReadingDoubts
{
    /// <summary>Values looked back on (findings.md: five times the median of the last six).</summary>
    public const int LookBack = 6;

    /// <summary>With fewer earlier values there is no usual yet.</summary>
    public const int Fewest = 3;

    /// <summary>Values this near to a factor are taken for a slip of unit or point.</summary>
    private const double SlipTolerance = 0.1;

    private static readonly double[] SlipFactors = [10, 100, 1000, ExactFactors.LitresPerUsGallon, ExactFactors.LitresPerImperialGallon];

    /// <summary>Whether a value lies outside what the test can show.</summary>
    /// <param name="test">The test.</param>
    /// <param name="value">In the test's first unit.</param>
    public static bool IsBeyond(TestInfo test, double value) => value < test.Lowest || value > test.Highest;

    /// <summary>How far is far: a factor for what is counted from zero, a difference where zero means nothing.</summary>
    /// <param name="test">The test.</param>
    /// <param name="value">In the test's first unit.</param>
    /// <param name="median">Median of the last values, in the same unit.</param>
    /// <param name="times">Factor.</param>
    public static bool IsFar(TestInfo test, double value, double median, double times) => test.Code switch
    {
        // Counts of colonies move by powers of ten, and load between nothing and all: far is usual there.
        TestCodes.DipSlide or TestCodes.ColonyCount or TestCodes.Legionella or TestCodes.Load => false,
        _ when Most(test) is { } most => Math.Abs(value - median) > most,
        _ => (value > times * median || value < median / times) && Math.Abs(value - median) > times * (test.Step ?? 0),
    };

    /// <summary>Largest difference from the usual that is not far, for tests whose zero means nothing; null for the others.</summary>
    /// <param name="test">The test.</param>
    public static double? Most(TestInfo test) => test.Code switch
    {
        TestCodes.Ph => 1.5,
        TestCodes.Temperature or TestCodes.Approach => 15,
        TestCodes.Orp => 400,
        _ => null,
    };

    /// <summary>Which slip of unit or point makes the usual of a value.</summary>
    /// <param name="value">In the test's first unit.</param>
    /// <param name="median">Median of the last values, in the same unit.</param>
    /// <returns>The factor, and whether the value is so many times the usual or that part of it; null where none fits.</returns>
    public static (bool IsTimes, double Factor)? SlipOf(double value, double median)
    {
        foreach (var factor in SlipFactors)
        {
            if (IsNear(value, median * factor))
            {
                return (true, factor);
            }

            if (IsNear(value, median / factor))
            {
                return (false, factor);
            }
        }

        return null;
    }

    private static bool IsNear(double a, double b) => b > 0 && Math.Abs(a - b) <= SlipTolerance * b;
}
