using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Probes;

/// <summary>Calibration arithmetic; LogBook reads and records, the person sets the controller.</summary>
/// <remarks>Conductivity: one standard near the working value, zero checked dry in air. Reference: 05-probe-drift.md, "Calibration".</remarks>
public static class Calibration
{
    /// <summary>Gain of one point, reference/reading.</summary>
    /// <param name="reading">Probe, above zero.</param>
    /// <param name="reference">Standard or hand meter, above zero, same unit.</param>
    /// <returns>Factor; none when either is zero or less.</returns>
    /// <remarks>Reference: 05-probe-drift.csv, gain_one_point.</remarks>
    public static Computed<double> Gain(double reading, double reference)
    {
        if (!(double.IsFinite(reference) && reference > 0))
        {
            return Computed<double>.None(ProbeReasons.NoReference);
        }

        return double.IsFinite(reading) && reading > 0 ? Computed<double>.Of(reference / reading) : Computed<double>.None(ProbeReasons.ReadsZero);
    }

    /// <summary>New cell constant, old × reference/reading.</summary>
    /// <param name="oldConstant">1/cm, above zero.</param>
    /// <param name="reading">Probe with the old constant.</param>
    /// <param name="reference">Standard, same unit.</param>
    /// <returns>1/cm; none as for <see cref="Gain"/>.</returns>
    /// <remarks>Reference: 05-probe-drift.csv, cell_constant_new.</remarks>
    public static Computed<double> CellConstant(double oldConstant, double reading, double reference) =>
        double.IsFinite(oldConstant) && oldConstant > 0
            ? Gain(reading, reference).Map(gain => oldConstant * gain)
            : Computed<double>.None(ProbeReasons.ReadsZero);

    /// <summary>Gain and zero of two points, (s2 − s1)/(r2 − r1) and s1 − gain × r1.</summary>
    /// <param name="first">Reading and standard of one point.</param>
    /// <param name="second">Reading and standard of the other, same units.</param>
    /// <returns>Gain and zero (unit of the standard): true = gain × reading + zero; none when both readings are alike.</returns>
    /// <remarks>Reference: 05-probe-drift.csv, gain_two_point, zero_two_point.</remarks>
    public static Computed<(double Gain, double Zero)> TwoPoints((double Reading, double Standard) first, (double Reading, double Standard) second)
    {
        var gain = (second.Standard - first.Standard) / (second.Reading - first.Reading);
        return first.Reading != second.Reading && double.IsFinite(gain)
            ? Computed<(double, double)>.Of((gain, first.Standard - (gain * first.Reading)))
            : Computed<(double, double)>.None(ProbeReasons.PointsAlike);
    }
}
