using LogBook.Domain.Outcomes;

namespace LogBook.Domain.Meters;

/// <summary>Contact heads and paddle wheels: pulses into volume and flow.</summary>
/// <remarks>
/// K changes with pipe size and fitting; below its minimum velocity a paddle wheel reads no flow. Volumes in any one unit.
/// Reference: 08-meters.md.
/// </remarks>
public static class Pulses
{
    /// <summary>Volume counted by a contact head.</summary>
    /// <param name="pulses">Count, not negative.</param>
    /// <param name="volumePerPulse">Volume a contact, above zero.</param>
    /// <returns>Volume in that unit.</returns>
    /// <remarks>Reference: 08-meters.csv, pulse_volume.</remarks>
    public static Computed<double> Volume(double pulses, double volumePerPulse) => IsAmount(pulses) && IsFactor(volumePerPulse)
        ? Computed<double>.Of(pulses * volumePerPulse)
        : Computed<double>.None(MeterReasons.Impossible);

    /// <summary>Volume counted by a paddle wheel, N/K.</summary>
    /// <param name="pulses">N, not negative.</param>
    /// <param name="pulsesPerVolume">K, above zero.</param>
    /// <returns>Volume in the unit of K.</returns>
    /// <remarks>Reference: 08-meters.csv, k_factor_volume.</remarks>
    public static Computed<double> VolumeByK(double pulses, double pulsesPerVolume) => IsAmount(pulses) && IsFactor(pulsesPerVolume)
        ? Computed<double>.Of(pulses / pulsesPerVolume)
        : Computed<double>.None(MeterReasons.Impossible);

    /// <summary>Flow from a pulse frequency, 60 f/K.</summary>
    /// <param name="hertz">f, pulses a second, not negative.</param>
    /// <param name="pulsesPerVolume">K, above zero.</param>
    /// <returns>Volume a minute in the unit of K.</returns>
    /// <remarks>Reference: 08-meters.csv, k_factor_flow.</remarks>
    public static Computed<double> FlowPerMinute(double hertz, double pulsesPerVolume) => VolumeByK(hertz, pulsesPerVolume).Map(perSecond => 60 * perSecond);

    /// <summary>K per another volume unit.</summary>
    /// <param name="pulsesPerVolume">K, above zero.</param>
    /// <param name="newUnitsInOld">New units in one old unit: 3.785411784 from US gallons to litres.</param>
    /// <returns>K per new unit.</returns>
    /// <remarks>Reference: 08-meters.csv, k_convert.</remarks>
    public static Computed<double> ConvertK(double pulsesPerVolume, double newUnitsInOld) => IsFactor(pulsesPerVolume) && IsFactor(newUnitsInOld)
        ? Computed<double>.Of(pulsesPerVolume / newUnitsInOld)
        : Computed<double>.None(MeterReasons.Impossible);

    /// <summary>K after a comparison with a true volume, K × indicated/true.</summary>
    /// <param name="pulsesPerVolume">K so far, above zero.</param>
    /// <param name="indicated">What it counted, above zero.</param>
    /// <param name="actual">What it was, above zero, same unit.</param>
    /// <returns>New K.</returns>
    /// <remarks>Reference: 08-meters.csv, k_corrected.</remarks>
    public static Computed<double> CorrectedK(double pulsesPerVolume, double indicated, double actual) =>
        IsFactor(pulsesPerVolume) && IsFactor(indicated) && IsFactor(actual)
            ? Computed<double>.Of(pulsesPerVolume * indicated / actual)
            : Computed<double>.None(MeterReasons.Impossible);

    /// <summary>Mean flow of an interval.</summary>
    /// <param name="volume">Volume, not negative.</param>
    /// <param name="elapsed">Time between the readings in UTC, above zero.</param>
    /// <returns>Volume an hour.</returns>
    /// <remarks>Reference: 08-meters.csv, flow_average.</remarks>
    public static Computed<double> MeanPerHour(double volume, TimeSpan elapsed) => IsAmount(volume) && elapsed > TimeSpan.Zero
        ? Computed<double>.Of(volume / elapsed.TotalHours)
        : Computed<double>.None(MeterReasons.Impossible);

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;

    private static bool IsFactor(double value) => double.IsFinite(value) && value > 0;
}
