using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Cycles;

/// <summary>
/// One well-mixed system of constant volume, V dc/dt = (E + W) cm − W c, in closed form. For half-lives, band times and as the check of a
/// simulation.
/// </summary>
/// <remarks>
/// Units are free but consistent: volume V, flows in V per time, concentrations or conductivities alike. E evaporation, W liquid loss
/// (with the bleed open or shut), cm make-up. Conductivity is followed as if it were a conserved concentration.
/// Reference: 01-cycles-and-water-balance.md, "Circulating system, for simulation".
/// </remarks>
public static class CirculatingSystem
{
    /// <summary>Level approached in the long run, cm (E + W)/W.</summary>
    /// <param name="makeUp">cm, not negative.</param>
    /// <param name="evaporation">E, not negative.</param>
    /// <param name="loss">W, above zero.</param>
    /// <returns>Level in the unit of <paramref name="makeUp"/>; none without loss, when it rises without end.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, ode_steady_state.</remarks>
    public static Computed<double> SteadyLevel(double makeUp, double evaporation, double loss)
    {
        if (!IsAmount(makeUp) || !IsAmount(evaporation) || !IsAmount(loss))
        {
            return Computed<double>.None(CyclesReasons.Impossible);
        }

        return loss > 0 ? Computed<double>.Of(makeUp * (evaporation + loss) / loss) : Computed<double>.None(CyclesReasons.NoLoss);
    }

    /// <summary>Level after a time of constant conditions.</summary>
    /// <param name="start">Level at the start.</param>
    /// <param name="makeUp">cm.</param>
    /// <param name="evaporation">E.</param>
    /// <param name="loss">W; zero while nothing leaves, when the rise is a straight line.</param>
    /// <param name="volume">V, above zero.</param>
    /// <param name="time">Not negative.</param>
    /// <returns>Level; none when an argument is negative or the volume zero.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, ode_no_bleed, ode_exponential.</remarks>
    public static Computed<double> LevelAfter(double start, double makeUp, double evaporation, double loss, double volume, double time)
    {
        if (!IsAmount(start) || !IsAmount(makeUp) || !IsAmount(evaporation) || !IsAmount(loss) || !IsAmount(time) || !IsAmount(volume) || volume == 0)
        {
            return Computed<double>.None(CyclesReasons.Impossible);
        }

        // (1 − exp(−x))/x stays exact as the loss goes to zero, where the steady level goes to infinity.
        var exponent = loss * time / volume;
        var gained = makeUp * (evaporation + loss) * time / volume * MeanOfDecay(exponent);
        return Computed<double>.Of((start * Math.Exp(-exponent)) + gained);
    }

    /// <summary>Time from one level to another under constant conditions, as on bleed or between two bleeds.</summary>
    /// <param name="from">Level at the start.</param>
    /// <param name="to">Level at the end.</param>
    /// <param name="makeUp">cm.</param>
    /// <param name="evaporation">E.</param>
    /// <param name="loss">W of that time: bleed plus drift and leaks, or these alone.</param>
    /// <param name="volume">V, above zero.</param>
    /// <returns>Time in the unit of the flows; none when that level is never reached.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, bleed_time_band, rise_time_band.</remarks>
    public static Computed<double> TimeBetween(double from, double to, double makeUp, double evaporation, double loss, double volume)
    {
        if (!IsAmount(from) || !IsAmount(to) || !IsAmount(makeUp) || !IsAmount(evaporation) || !IsAmount(loss) || !IsAmount(volume) || volume == 0)
        {
            return Computed<double>.None(CyclesReasons.Impossible);
        }

        if (from == to)
        {
            return Computed<double>.Of(0);
        }

        if (loss == 0)
        {
            var risePerTime = makeUp * evaporation / volume;
            return to > from && risePerTime > 0 ? Computed<double>.Of((to - from) / risePerTime) : Computed<double>.None(CyclesReasons.NeverReached);
        }

        var steady = makeUp * (evaporation + loss) / loss;
        var ratio = (from - steady) / (to - steady);
        return double.IsFinite(ratio) && ratio > 1
            ? Computed<double>.Of(volume / loss * Math.Log(ratio))
            : Computed<double>.None(CyclesReasons.NeverReached);
    }

    /// <summary>Half-life of anything dissolved (holding time index), V ln 2/W.</summary>
    /// <param name="volume">V, not negative.</param>
    /// <param name="loss">W, all liquid loss, above zero.</param>
    /// <returns>Time in the unit of the flow; none without loss.</returns>
    /// <remarks>Not in general the time in which make-up solids double. Reference: 01-cycles-and-water-balance.csv, half_life.</remarks>
    public static Computed<double> HalfLife(double volume, double loss) => ResidenceTime(volume, loss).Map(time => time * Math.Log(2));

    /// <summary>Mean stay of water, V/W.</summary>
    /// <param name="volume">V, not negative.</param>
    /// <param name="loss">W, above zero.</param>
    /// <returns>Time in the unit of the flow; none without loss.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, residence_time.</remarks>
    public static Computed<double> ResidenceTime(double volume, double loss)
    {
        if (!IsAmount(volume) || !IsAmount(loss))
        {
            return Computed<double>.None(CyclesReasons.Impossible);
        }

        return loss > 0 ? Computed<double>.Of(volume / loss) : Computed<double>.None(CyclesReasons.NoLoss);
    }

    /// <summary>Share of what was dissolved that is left after a time, exp(−W t/V).</summary>
    /// <param name="volume">V, above zero.</param>
    /// <param name="loss">W, not negative.</param>
    /// <param name="time">Not negative.</param>
    /// <returns>0 to 1.</returns>
    /// <remarks>Reference: 01-cycles-and-water-balance.csv, fraction_left.</remarks>
    public static Computed<double> FractionLeft(double volume, double loss, double time) =>
        IsAmount(volume) && volume > 0 && IsAmount(loss) && IsAmount(time)
            ? Computed<double>.Of(Math.Exp(-loss * time / volume))
            : Computed<double>.None(CyclesReasons.Impossible);

    // Below 1e-4 the difference from one loses digits; three terms of the series do not.
    private static double MeanOfDecay(double x) => x < 1e-4 ? 1 - (x / 2) + (x * x / 6) - (x * x * x / 24) : (1 - Math.Exp(-x)) / x;

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;
}
