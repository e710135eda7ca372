using LogBook.Bank.Runs;

namespace LogBook.Bank.Faults;

/// <summary>Uncertainties of the statistics by which a fault shows, for "knowable": effect beyond 3u and beyond the contract's threshold.</summary>
/// <remarks>From trade guide 6.4 (noise of the readings) by the usual sum of squares.</remarks>
internal static class Statistics3u
{
    /// <summary>Display against hand meter: hand 1 %, its common error 1.5 %, compensation 1 %, display 1 %.</summary>
    public const double ProbeError = 0.023;

    /// <summary>Reference conductivity alone.</summary>
    public const double Conductivity = 0.021;

    /// <summary>Liquid loss of an interval against the system's own: make-up mean 3 %, cycles 4 %, hours 1 %.</summary>
    public const double Loss = 0.06;

    /// <summary>Calcium against conservative ions, both waters: four tests of about 4 %.</summary>
    public const double CalciumRatio = 0.075;

    /// <summary>Make-up conductivity against its own mean: season and weeks of 6 %.</summary>
    public const double MakeUp = 0.06;

    /// <summary>Residual test.</summary>
    public const double Residual = 0.09;

    /// <summary>pH by kit.</summary>
    public const double Ph = 0.1;

    /// <summary>Langelier index from the tests of one visit: pH 0.1, hardness and alkalinity 0.03 each in decades, formula 0.175 (it is within 0.35 of a speciation program).</summary>
    public const double Langelier = 0.21;

    /// <summary>Corrosion rate of a coupon, a share of it.</summary>
    public const double Coupon = 0.1;

    /// <summary>One drum level, a share of its capacity.</summary>
    public const double Level = 0.02;

    /// <summary>Product used against expected over the best window that ends at a visit: the largest effect in units of its u.</summary>
    public static bool StockShows(Course course, string drum, int at, DateOnly onset, Func<int, int, double> expected, double least)
    {
        var capacity = course.System.Full.Drums.First(d => d.Code == drum).CapacityL!.Value;
        for (var from = at - 1; from >= 0 && course.Truths[at].Hours - course.Truths[from].Hours <= 70 * 24; from--)
        {
            if (course.DayOf(from) < onset.AddDays(-course.System.EveryDays))
            {
                break;
            }

            var should = expected(from, at);
            if (should <= 0)
            {
                continue;
            }

            var effect = Math.Abs((course.Used(drum, from, at) / should) - 1);
            var u = Math.Sqrt(Math.Pow(1.414 * Level * capacity / should, 2) + Math.Pow(0.06, 2));
            if (effect > least && effect > 3 * u)
            {
                return true;
            }
        }

        return false;
    }
}
