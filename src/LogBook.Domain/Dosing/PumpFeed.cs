using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;

namespace LogBook.Domain.Dosing;

/// <summary>Steady product level of the feed modes, from pump output, density and water.</summary>
/// <remarks>
/// Modes tied to the bleed assume that all loss goes through the bleed valve: leaks and drift leave the system under-dosed by bleed/loss.
/// Reference: 02-dosing.md, "Pump and paced feed".
/// </remarks>
public static class PumpFeed
{
    private const double MgPerKg = 1e6;

    /// <summary>Time a pump needs for a volume.</summary>
    /// <param name="volume">Product to be fed.</param>
    /// <param name="rated">Output at full setting.</param>
    /// <param name="settingPercent">Setting, above 0, up to 100 %.</param>
    /// <returns>Time; none for a pump without output.</returns>
    /// <remarks>Reference: 02-dosing.csv, pump_time.</remarks>
    public static Computed<TimeSpan> TimeFor(Volume volume, Flow rated, double settingPercent = 100)
    {
        var hours = volume.Litres / (rated.LitresPerHour * settingPercent / 100);
        return settingPercent is > 0 and <= 100 && rated > Flow.Zero && hours < TimeSpan.MaxValue.TotalHours
            ? Computed<TimeSpan>.Of(TimeSpan.FromHours(hours))
            : Computed<TimeSpan>.None(DosingReasons.Impossible);
    }

    /// <summary>Level when the pump runs alongside the bleed, p s/b.</summary>
    /// <param name="pump">p, pump output.</param>
    /// <param name="densityKgPerL">s, of the product, above zero.</param>
    /// <param name="bleed">b, bleed flow when open, above zero.</param>
    /// <returns>mg/L as product.</returns>
    /// <remarks>Reference: 02-dosing.csv, alongside_bleed_conc.</remarks>
    public static Computed<double> AlongsideBleed(Flow pump, double densityKgPerL, Flow bleed) =>
        IsFactor(densityKgPerL) && bleed > Flow.Zero
            ? Computed<double>.Of(pump.LitresPerHour * densityKgPerL * MgPerKg / bleed.LitresPerHour)
            : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Level when the pump runs a share of the last bleed.</summary>
    /// <param name="pump">Pump output.</param>
    /// <param name="densityKgPerL">Of the product, above zero.</param>
    /// <param name="bleed">Bleed flow when open, above zero.</param>
    /// <param name="sharePercent">Share of the bleed's time, not negative.</param>
    /// <returns>mg/L as product.</returns>
    /// <remarks>Holds when the feed ends before the next bleed. Reference: 02-dosing.csv, share_of_last_bleed_conc.</remarks>
    public static Computed<double> ShareOfLastBleed(Flow pump, double densityKgPerL, Flow bleed, double sharePercent) => IsAmount(sharePercent)
        ? AlongsideBleed(pump, densityKgPerL, bleed).Map(level => level * sharePercent / 100)
        : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Level when the pump runs a fixed share of the time.</summary>
    /// <param name="pump">Pump output.</param>
    /// <param name="densityKgPerL">Of the product, above zero.</param>
    /// <param name="sharePercent">Share of the time, 0 to 100.</param>
    /// <param name="meanLoss">Mean liquid loss, above zero: the level moves with the load.</param>
    /// <returns>mg/L as product.</returns>
    /// <remarks>Reference: 02-dosing.csv, fixed_share_conc.</remarks>
    public static Computed<double> FixedShare(Flow pump, double densityKgPerL, double sharePercent, Flow meanLoss) => sharePercent is >= 0 and <= 100
        ? AlongsideBleed(pump, densityKgPerL, meanLoss).Map(level => level * sharePercent / 100)
        : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Level in the make-up when a water meter paces the pump; times cycles it is the level in the system.</summary>
    /// <param name="pump">Pump output.</param>
    /// <param name="densityKgPerL">Of the product, above zero.</param>
    /// <param name="secondsPerContact">Run time for each contact, s, not negative.</param>
    /// <param name="contact">Water for each contact, above zero.</param>
    /// <returns>mg/L as product in the make-up.</returns>
    /// <remarks>Reference: 02-dosing.csv, meter_paced_makeup_conc, meter_paced_system_conc.</remarks>
    public static Computed<double> PacedMakeUp(Flow pump, double densityKgPerL, double secondsPerContact, Volume contact) =>
        IsFactor(densityKgPerL) && IsAmount(secondsPerContact) && contact > Volume.Zero
            ? Computed<double>.Of(pump.LitresPerHour * secondsPerContact / 3600 * densityKgPerL * MgPerKg / contact.Litres)
            : Computed<double>.None(DosingReasons.Impossible);

    /// <summary>Run time for each contact that gives a level in the system.</summary>
    /// <param name="systemMgPerL">Level wanted, mg/L as product.</param>
    /// <param name="cycles">Cycles, above zero.</param>
    /// <param name="contact">Water for each contact.</param>
    /// <param name="pump">Pump output, above zero.</param>
    /// <param name="densityKgPerL">Of the product, above zero.</param>
    /// <returns>Seconds; none for cycles of zero or a pump without output.</returns>
    /// <remarks>Reference: 02-dosing.csv, meter_paced_seconds.</remarks>
    public static Computed<double> PacedSeconds(double systemMgPerL, double cycles, Volume contact, Flow pump, double densityKgPerL) =>
        Dose.InMakeUp(systemMgPerL, cycles).Then(inMakeUp => pump > Flow.Zero && IsFactor(densityKgPerL)
            ? Computed<double>.Of(inMakeUp * contact.Litres / (pump.LitresPerHour * densityKgPerL * MgPerKg) * 3600)
            : Computed<double>.None(DosingReasons.Impossible));

    private static bool IsAmount(double value) => double.IsFinite(value) && value >= 0;

    private static bool IsFactor(double value) => double.IsFinite(value) && value > 0;
}
