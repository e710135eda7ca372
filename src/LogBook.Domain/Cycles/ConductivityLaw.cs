using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Cycles;

/// <summary>What conductivity reads at true cycles: make-up × C × (1 − bend × (C − 1)), so that both can be turned into each other.</summary>
/// <remarks>
/// A straight line for the ratio is within the measured bands up to 8 cycles; beyond <see cref="MostCycles"/> it is not used.
/// Reference: 01-ec-vs-cycles.csv (0.76 to 0.95 of the true cycles at 5).
/// </remarks>
public sealed record ConductivityLaw
{
    /// <summary>Bend before a system has a baseline of its own: see <see cref="CyclesOfConcentration.ConductivityRatioOverTrue"/>.</summary>
    public const double UsualBend = 0.025;

    /// <summary>Standard uncertainty of the bend: the measured band 0.76 to 0.95 at 5 cycles is ± 0.024 for each cycle above one; as a rectangle (JCGM 100, 4.3.7) 0.0137.</summary>
    public const double BendUncertainty = 0.0137;

    /// <summary>Cycles up to which the line is used.</summary>
    public const double MostCycles = 13;

    private ConductivityLaw(double makeUp, double bend) => (MakeUpUsPerCm, Bend) = (makeUp, bend);

    /// <summary>Conductivity of the make-up, µS/cm at 25 °C.</summary>
    public double MakeUpUsPerCm { get; }

    /// <summary>How much of its ratio conductivity loses for each cycle above one, 0 to 0.06.</summary>
    public double Bend { get; }

    /// <summary>A law.</summary>
    /// <param name="makeUpUsPerCm">Conductivity of the make-up, µS/cm, above zero.</param>
    /// <param name="bend">0 where conductivity is followed as if it were conserved, up to 0.06.</param>
    /// <returns>The law; none for numbers that cannot occur.</returns>
    public static Computed<ConductivityLaw> Of(double makeUpUsPerCm, double bend = UsualBend)
    {
        if (!(double.IsFinite(makeUpUsPerCm) && makeUpUsPerCm > 0))
        {
            return Computed<ConductivityLaw>.None(CyclesReasons.MakeUpZero);
        }

        return bend is >= 0 and <= 0.06 ? Computed<ConductivityLaw>.Of(new ConductivityLaw(makeUpUsPerCm, bend)) : Computed<ConductivityLaw>.None(CyclesReasons.Impossible);
    }

    /// <summary>Conductivity at true cycles.</summary>
    /// <param name="cycles">1 to <see cref="MostCycles"/>.</param>
    /// <returns>µS/cm; none outside that range.</returns>
    public Computed<double> At(double cycles) => cycles >= 1 && cycles <= Top
        ? Computed<double>.Of(MakeUpUsPerCm * cycles * (1 - (Bend * (cycles - 1))))
        : Computed<double>.None(cycles < 1 ? CyclesReasons.CyclesNotAboveOne : CyclesReasons.LawEnds);

    /// <summary>True cycles at a conductivity: the lower root of the quadratic.</summary>
    /// <param name="usPerCm">Not below the make-up.</param>
    /// <returns>Cycles; none below the make-up or above what the line covers.</returns>
    public Computed<double> CyclesAt(double usPerCm)
    {
        var ratio = usPerCm / MakeUpUsPerCm;
        if (!double.IsFinite(ratio) || ratio < 1)
        {
            return Computed<double>.None(CyclesReasons.CyclesNotAboveOne);
        }

        var half = (1 + Bend) / 2;
        var root = (half * half) - (Bend * ratio);
        var cycles = root < 0 ? double.PositiveInfinity : ratio / (half + Math.Sqrt(root));
        return cycles <= Top ? Computed<double>.Of(cycles) : Computed<double>.None(CyclesReasons.LawEnds);
    }

    // Where the line would bend over, more cycles would read less.
    private double Top => Bend == 0 ? 1000 : Math.Min(MostCycles, (1 + Bend) / (2 * Bend));
}
