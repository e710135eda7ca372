using LogBook.Domain.Programmes;

namespace LogBook.Domain.Visits;

/// <summary>
/// How far from what a test usually gives at one place a value is asked again. A value is far when it is far from the median
/// of the last values and from the very last one: a level that has changed is asked about once, not for weeks.
/// </summary>
/// <remarks>
/// The width follows the spread of the last values (1.4826 times the median of their distances, which is the standard
/// deviation of a normal spread), between a least and a most. Those bounds and the multiple are this project's own choice,
/// tuned on simulated firms (EntrySlipTests): nearly all slips of a decimal point are asked, few true values are.
/// </remarks>
internal static class UsualBand
{
    /// <summary>Standard deviation of a normal spread by its median distance.</summary>
    private const double SpreadOfDistance = 1.4826;

    /// <summary>Spreads that are still usual.</summary>
    private const double Spreads = 4;

    /// <summary>Within so many steps of the kit two values are no different.</summary>
    private const double Steps = 3;

    /// <summary>Dip slides are read in powers of ten; a whole power beyond all of the last ones is far.</summary>
    private const double Decade = 9.99;

    /// <summary>Counts of a laboratory scatter by half a power of ten; this many times beyond all of the last ones is far.</summary>
    private const double TimesCount = 4;

    /// <summary>Whether a value is far from the usual.</summary>
    /// <param name="test">The test.</param>
    /// <param name="value">The value, in the test's first unit.</param>
    /// <param name="last">Last values, oldest first, in the same unit; at least one.</param>
    /// <param name="step">Step in which it was read, in the same unit.</param>
    /// <param name="mostTimes">Beyond this factor a value is always far: the threshold of doubtful results.</param>
    public static bool IsFar(TestInfo test, double value, IReadOnlyList<double> last, double step, double mostTimes) => test.Code switch
    {
        // Load moves between nothing and all.
        TestCodes.Load => false,
        TestCodes.DipSlide => value >= Decade * last.Max() || value * Decade <= last.Min(),
        TestCodes.ColonyCount or TestCodes.Legionella => value > TimesCount * last.Max() || value * TimesCount < last.Min(),
        TestCodes.Ph => IsApart(value, last, 0.5, 1.5),
        TestCodes.Temperature or TestCodes.Approach => IsApart(value, last, 6, 15),
        TestCodes.Orp => IsApart(value, last, 120, 400),
        TestCodes.Conductivity or TestCodes.Tds => IsTimes(value, last, 1.25, step, mostTimes),
        _ => IsTimes(value, last, 1.5, step, mostTimes),
    };

    /// <summary>Whether a value is many times the usual or a small part of it.</summary>
    /// <param name="value">The value, zero or more.</param>
    /// <param name="last">Last values, oldest first.</param>
    /// <param name="least">Factor that is never asked about.</param>
    /// <param name="step">Difference that can be read at all.</param>
    /// <param name="most">Factor beyond which it is always far.</param>
    public static bool IsTimes(double value, IReadOnlyList<double> last, double least, double step, double most)
    {
        var median = VisitChecksReadings.Median(last);
        var logs = last.Where(v => v > 0).Select(v => Math.Log(v)).ToList();
        var spread = logs.Count == 0 ? 0 : SpreadOf(logs);
        var times = Math.Clamp(Math.Exp(Spreads * spread), least, most);
        bool Far(double usual) => Math.Abs(value - usual) > Steps * step && (value > usual * times || value < usual / times);
        return Far(median) && Far(last[^1]);
    }

    private static bool IsApart(double value, IReadOnlyList<double> last, double least, double most)
    {
        var limit = Math.Clamp(Spreads * SpreadOf(last), least, most);
        return Math.Abs(value - VisitChecksReadings.Median(last)) > limit && Math.Abs(value - last[^1]) > limit;
    }

    private static double SpreadOf(IReadOnlyList<double> values)
    {
        var median = VisitChecksReadings.Median(values);
        return SpreadOfDistance * VisitChecksReadings.Median([.. values.Select(v => Math.Abs(v - median))]);
    }
}
