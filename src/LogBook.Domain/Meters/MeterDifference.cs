using LogBook.Domain.Estimates;
using LogBook.Domain.Outcomes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Meters;

/// <summary>Water between two visits from a register; rollover, reset and replacement are decided by what the record says, never silently.</summary>
/// <remarks>
/// Uncertainty: the meter's own error repeats under the name "meter:CODE" (2 %, paddle wheel 5 %); one count of resolution at each end is
/// random, count/√6. Reference: 08-meters.md, 08-meters.csv.
/// </remarks>
public static class MeterDifference
{
    /// <summary>Water by the dial.</summary>
    /// <param name="meter">Digits, unit and multiplier of the register now in place.</param>
    /// <param name="previous">Reading at the earlier visit.</param>
    /// <param name="current">Reading at the later visit; its flag says whether the register was replaced between.</param>
    /// <param name="judge">Decides whether a fall was a rollover.</param>
    /// <param name="oldMeter">The register before a replacement, when its unit, multiplier or digits differ.</param>
    /// <param name="table">Default uncertainties.</param>
    /// <param name="kind">How the meter works.</param>
    /// <returns>Litres; none when a count is missing, fell without a reason, or a replacement lacks its counts.</returns>
    /// <remarks>Reference: 08-meters.csv, meter_difference, meter_difference_with_multiplier; 08-meters.md, replacement.</remarks>
    public static Computed<Estimate> OfDial(
        Meter meter,
        MeterReading previous,
        MeterReading current,
        RolloverJudge judge,
        Meter? oldMeter = null,
        UncertaintyTable? table = null,
        WaterMeterKind kind = WaterMeterKind.Meter)
    {
        if (previous.Dial is not { } before || current.Dial is not { } now)
        {
            return Computed<Estimate>.None(MeterReasons.NotRead);
        }

        var register = Register.Dial(meter);
        if (current.Replaced != true)
        {
            return register.Then(r => r.Between(before, now, judge).Map(litres => With(litres, r.LitresPerCount, meter, table, kind)));
        }

        // Use = (old final − old previous) + (new now − new start).
        if (current.OldFinal is not { } oldFinal || current.NewStart is not { } newStart)
        {
            return Computed<Estimate>.None(MeterReasons.Replaced);
        }

        return Register.Dial(oldMeter ?? meter).Then(old => register.Then(r =>
            old.Between(before, oldFinal, judge).Then(first => r.Between(newStart, now, judge).Map(second =>
                With(first, old.LitresPerCount, oldMeter ?? meter, table, kind).Plus(With(second, r.LitresPerCount, meter, table, kind))))));
    }

    /// <summary>Water by the controller's total, which rolls over only when the meter has <see cref="Meter.TotalDigits"/>.</summary>
    /// <param name="meter">Unit and digits.</param>
    /// <param name="previous">Reading at the earlier visit; a reset made there counts from its "after".</param>
    /// <param name="current">Reading at the later visit; a reset made there counts to its "before".</param>
    /// <param name="judge">Decides whether a fall was a rollover.</param>
    /// <param name="table">Default uncertainties.</param>
    /// <param name="kind">How the meter works.</param>
    /// <returns>Litres; none when a total is missing, was reset between the visits, or fell without a reason.</returns>
    public static Computed<Estimate> OfTotal(
        Meter meter,
        MeterReading previous,
        MeterReading current,
        RolloverJudge judge,
        UncertaintyTable? table = null,
        WaterMeterKind kind = WaterMeterKind.Meter)
    {
        if ((previous.After ?? previous.Total) is not { } before || (current.Before ?? current.Total) is not { } now)
        {
            return Computed<Estimate>.None(MeterReasons.NotRead);
        }

        if (current.Reset == true)
        {
            return Computed<Estimate>.None(MeterReasons.Reset);
        }

        return Register.Total(meter).Then(r => r.Between(before, now, judge).Map(litres =>
            With(litres, PulseLitres(meter) ?? r.LitresPerCount, meter, table, kind)));
    }

    private static double? PulseLitres(Meter meter) => meter switch
    {
        { LitresPerPulse: > 0 } => meter.LitresPerPulse,
        { PulsesPerLitre: > 0 } => 1 / meter.PulsesPerLitre,
        _ => null,
    };

    private static Estimate With(double litres, double litresPerCount, Meter meter, UncertaintyTable? table, WaterMeterKind kind) =>
        ((table ?? UncertaintyTable.Default).WaterMeter(kind, meter.Code) with { RandomAbsolute = litresPerCount / Math.Sqrt(6) }).On(litres, "L");

    private sealed record Register(int? Digits, double LitresPerCount)
    {
        internal static Computed<Register> Dial(Meter meter) => Of(meter, meter.Digits, meter.DialMultiplier ?? 1);

        internal static Computed<Register> Total(Meter meter) => Of(meter, meter.TotalDigits, 1);

        internal Computed<double> Between(double before, double now, RolloverJudge judge)
        {
            if (Digits is not { } digits)
            {
                return before >= 0 && now >= before && double.IsFinite(now)
                    ? Computed<double>.Of((now - before) * LitresPerCount)
                    : Computed<double>.None(MeterReasons.Fell);
            }

            return RegisterArithmetic.Difference(before, now, digits).Map(counts => counts * LitresPerCount).Then(litres =>
                now >= before || judge.Believes(litres) ? Computed<double>.Of(litres) : Computed<double>.None(MeterReasons.Fell));
        }

        private static Computed<Register> Of(Meter meter, int? digits, double multiplier) => multiplier > 0
            ? Units.ToVolume(multiplier, meter.Unit).Map(volume => new Register(digits, volume.Litres))
            : Computed<Register>.None(MeterReasons.Impossible);
    }
}
