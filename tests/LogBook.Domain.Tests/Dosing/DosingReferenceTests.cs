using LogBook.Domain.Dosing;
using LogBook.Domain.Drums;
using LogBook.Domain.Estimates;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Dosing;

public sealed class DosingReferenceTests
{
    private const double KgPerLInPoundPerGallon = ExactFactors.KilogramsPerPound / ExactFactors.LitresPerUsGallon;

    public static ReferenceChapter Chapter { get; } = new("02-dosing.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["ppm_per_lb_per_1000gal"] = _ => ExactFactors.MilligramsPerLitrePerPoundPerThousandUsGallons,
        ["lb_per_1000gal_per_ppm"] = _ => Pounds(Dose.MassFor(1, Volume.FromUsGallons(1000)).Value),
        ["lb_per_Mgal_per_mgL"] = _ => Pounds(Dose.MassFor(1, Volume.FromUsGallons(1e6)).Value),
        ["mass_for_dose"] = row => row.Has("volume_gal")
            ? Pounds(Dose.MassFor(row["dose_mgL"], Volume.FromUsGallons(row["volume_gal"])).Value)
            : Dose.MassFor(row["dose_mgL"], Volume.FromCubicMetres(row["volume_m3"])).Value.Kilograms,
        ["product_from_active"] = row => Dose.ProductFromActive(row["active_mgL"], row["active_pct"]).Value,
        ["volume_from_mass"] = row => DrumVolume.FromMass(Mass.FromKilograms(row["mass_kg"]), row["SG"] * row["water_kg_per_L"]).Value.Litres,
        ["density_water"] = row => WaterDensity.At(
            row.Has("T_F") ? Temperature.FromFahrenheit(row["T_F"]) : Temperature.FromCelsius(row["T_C"])).Value,
        ["gal_for_dose"] = row => Gallons(DrumVolume.FromMass(
            Dose.MassFor(row["dose_mgL"], Volume.FromUsGallons(row["volume_gal"])).Value, Density(row)).Value.Litres),
        ["fl_oz_per_1000gal"] = row => 1000 / ExactFactors.MillilitresPerUsFluidOunce * DrumVolume.FromMass(
            Dose.MassFor(row["dose_mgL"], Volume.FromUsGallons(1000)).Value, row["SG"] * row["water_kg_per_L"]).Value.Litres,
        ["feed_rate_to_hold"] = row => row.Has("loss_gpm")
            ? 24 * Dose.FeedKgPerHour(row["dose_mgL"], Flow.FromUsGallonsPerMinute(row["loss_gpm"])).Value / ExactFactors.KilogramsPerPound
            : 24 * Dose.FeedKgPerHour(row["dose_mgL"], Flow.FromCubicMetresPerHour(row["loss_m3_h"])).Value,
        ["makeup_dose_for_system_dose"] = row => Dose.InMakeUp(row["system_mgL"], row["cycles"]).Value,
        ["expected_use"] = row => Gallons(Dose.ExpectedUse(
            Water(row["makeup_gal"]), Estimate.Exact(row["cycles"]), row["dose_mgL"], Density(row)).Value.Value),
        ["inhibitor_from_use"] = row => Dose.ImpliedLevel(
            Water(row["use_gal"]), Water(row["makeup_gal"]), Estimate.Exact(row["cycles"]), Density(row)).Value.Value,
        ["slug_remaining"] = row => Washout.LevelAfter(row["C0_mgL"], row["V_gal"], row["loss_gpm"], row["t_h"] * 60).Value,
        ["slug_remaining_with_decay"] = row =>
            Washout.LevelAfter(row["C0_mgL"], row["V_m3"], row["loss_m3_h"], row["t_h"], row["decay_per_h"]).Value,
        ["time_above"] = row => Washout.TimeAbove(row["C0_mgL"], row["Cmin_mgL"], row["V_m3"], row["loss_m3_h"]).Value,
        ["ct_integral"] = row => Washout.LevelTime(row["C0_mgL"], row["V_m3"], row["loss_m3_h"], row["t_h"]).Value,
        ["slow_feed_peak"] = row => 1000 * Washout.LevelAfterFeed(row["feed_kg_h"], row["V_m3"], row["loss_m3_h"], row["feed_h"]).Value,
        ["pump_time"] = row => PumpFeed.TimeFor(
            Volume.FromUsGallons(row["product_gal"]),
            Flow.FromLitresPerHour(row["pump_gph"] * ExactFactors.LitresPerUsGallon),
            row["setting_pct"]).Value.TotalMinutes,
        ["alongside_bleed_conc"] = row => PumpFeed.AlongsideBleed(Pump(row), row["SG"], PerMinute(row["bleed_L_min"])).Value,
        ["share_of_last_bleed_conc"] = row =>
            PumpFeed.ShareOfLastBleed(Pump(row), row["SG"], PerMinute(row["bleed_L_min"]), row["feed_pct"]).Value,
        ["fixed_share_conc"] = row => PumpFeed.FixedShare(Pump(row), row["SG"], row["on_pct"], PerMinute(row["avg_loss_L_min"])).Value,
        ["meter_paced_makeup_conc"] = PacedMakeUp,

        // "as above; cycles=4": the row before it.
        ["02-027"] = row => (double)PacedMakeUp(ReferenceTable.Rows("02-dosing.csv").Single(before => before.Id == "02-026")) * row["cycles"],
        ["meter_paced_seconds"] = row => PumpFeed.PacedSeconds(
            row["system_mgL"], row["cycles"], Volume.FromUsGallons(row["gal_per_contact"]), Pump(row), row["SG"]).Value,
        ["expected_use_uncertainty"] = RelativeUncertainty,
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    private static object PacedMakeUp(ReferenceRow row) => PumpFeed.PacedMakeUp(
        Pump(row), row["SG"], row["seconds_per_contact"], Volume.FromUsGallons(row["gal_per_contact"])).Value;

    private static object RelativeUncertainty(ReferenceRow row)
    {
        static Estimate Of(double value, double percent, string unit = "1") => new(value, unit, value * percent / 100);
        var use = Dose.ExpectedUse(Of(1000, row["u_meter_pct"], "L"), Of(4, row["u_cycles_pct"]), 100).Value
            .Times(Of(1, row["u_level_pct"]), "L")
            .Times(Of(1, row["u_pump_pct"]), "L");
        return 100 * use.StandardUncertainty / use.Value;
    }

    private static double Density(ReferenceRow row) => row["SG"] * row["water_lb_per_gal"] * KgPerLInPoundPerGallon;

    private static Estimate Water(double gallons) => Estimate.Exact(gallons * ExactFactors.LitresPerUsGallon, "L");

    private static Flow Pump(ReferenceRow row) => PerMinute(row["pump_mL_min"] / 1000);

    private static Flow PerMinute(double litres) => Flow.FromLitresPerHour(60 * litres);

    private static double Gallons(double litres) => litres / ExactFactors.LitresPerUsGallon;

    private static double Pounds(Mass mass) => mass.Kilograms / ExactFactors.KilogramsPerPound;
}
