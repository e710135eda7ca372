using LogBook.Domain.Meters;
using LogBook.Domain.Quantities;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Reference;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Meters;

public sealed class MetersReferenceTests
{
    public static ReferenceChapter Chapter { get; } = new("08-meters.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["pulse_volume"] = row => Pulses.Volume(row["pulses"], row["gal_per_contact"]).Value,
        ["k_factor_volume"] = row => Pulses.VolumeByK(row["pulses"], row["K_pulses_per_gal"]).Value,
        ["k_factor_flow"] = row => Pulses.FlowPerMinute(row["Hz"], row["K_pulses_per_gal"]).Value,
        ["k_convert"] = row => Pulses.ConvertK(row["K_pulses_per_gal"], ExactFactors.LitresPerUsGallon).Value,
        ["k_corrected"] = row => Pulses.CorrectedK(row["K_old"], row["indicated_gal"], row["true_gal"]).Value,
        ["meter_difference"] = row => RegisterArithmetic.Difference(row["previous"], row["current"], (int)row["digits"]).Value,
        ["meter_difference_with_multiplier"] = WithMultiplier,
        ["meter_reset_suspected"] = row => RegisterArithmetic.ResetIsSuspected(
            row["previous"], row["current"], (int)row["digits"], row["max_plausible"]).Value,
        ["scale_4_20"] = row => CurrentLoop.Scale(row["mA"], row["lo"], row["hi"]).Value,
        ["ne43_state"] = row => CurrentLoop.StateOf(row["mA"]) switch
        {
            LoopState.Fault => "fault",
            LoopState.Indeterminate => "indeterminate",
            LoopState.Valid => "valid",
            LoopState.ValidSaturatedLow => "valid-saturated-low",
            _ => "valid-saturated-high",
        },
        ["flow_average"] = row => Pulses.MeanPerHour(row["gal"], TimeSpan.FromHours(row["hours"])).Value / 60,
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    private static object WithMultiplier(ReferenceRow row)
    {
        var meter = new Meter
        {
            Code = "MU", Measures = MeterMeasures.MakeUp, Unit = UnitCodes.UsGallon, Digits = (int)row["digits"], DialMultiplier = row["multiplier"],
        };
        var judge = new RolloverJudge(TimeSpan.FromDays(7), MaxLPerH: 1000, UsualLPerH: null);
        var litres = MeterDifference.OfDial(
            meter, new MeterReading { Meter = "MU", Dial = row["previous"] }, new MeterReading { Meter = "MU", Dial = row["current"] }, judge).Value.Value;

        // The row counts gallons exactly; a conversion there and back keeps 12 digits.
        return Math.Round(litres / ExactFactors.LitresPerUsGallon, 9);
    }
}
