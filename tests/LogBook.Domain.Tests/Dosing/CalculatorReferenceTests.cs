using LogBook.Domain.DosePlans;
using LogBook.Domain.Dosing;
using LogBook.Domain.Estimates;
using LogBook.Domain.Meters;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.Dosing;

/// <summary>The calculators of the page against the reference rows, each within the row's own tolerance.</summary>
public sealed class CalculatorReferenceTests
{
    private const double LitresPerGallon = ExactFactors.LitresPerUsGallon;

    private static readonly Dictionary<string, Func<ReferenceRow, object>> ByRow = new()
    {
        ["01-049"] = row => LongestBleed.Of(
            row["c_hi"], row["c_lo"], Water(row["c_makeup"]), Flow(60 * row["evap_gpm"]), Flow(60 * row["bleed_gpm"]), Volume(row["V_gal"]), factor: 1, bend: 0).Result.Value.Value,
        ["02-023"] = row => FeedCalculator.LevelAt(Case(row, FeedMode.AlongsideBleed) with { BleedLPerH = Flow(60 * row["bleed_L_min"]) }, 0.06 * row["pump_mL_min"]).Result.Value.Value,
        ["02-024"] = row => FeedCalculator.LevelAt(Case(row, FeedMode.ShareOfLastBleed) with { BleedLPerH = Flow(60 * row["bleed_L_min"]) }, row["feed_pct"]).Result.Value.Value,
        ["02-025"] = row => FeedCalculator.LevelAt(Case(row, FeedMode.FixedShare) with { LossLPerH = Flow(60 * row["avg_loss_L_min"]) }, row["on_pct"]).Result.Value.Value,
        ["02-026"] = row => FeedCalculator.LevelAt(Paced(row, row["gal_per_contact"], 1), row["seconds_per_contact"]).Result.Value.Value,
        ["02-027"] = row => FeedCalculator.LevelAt(Paced(Row("02-dosing.csv", "02-026"), 100, row["cycles"]), 15).Result.Value.Value,
        ["02-028"] = row => FeedCalculator.SettingFor(Paced(row, row["gal_per_contact"], row["cycles"]), row["system_mgL"]).Setting.Result.Value.Value,
        ["12-012"] = row => FeedCalculator.SettingFor(
            new FeedCase
            {
                Mode = FeedMode.DosePlan,
                PumpLPerH = Flow(row["pump_gph"] * LitresPerGallon),
                DensityKgPerL = row["SG"] * row["water_lb_per_gal"] * ExactFactors.KilogramsPerPound / LitresPerGallon,
                VolumeL = Volume(row["V_gal"] * LitresPerGallon),
            },
            row["dose_mgL"]).Setting.Result.Value.Value,
        ["12-015"] = row => 60 * HoldFits.Of(Hold(row, 0) with { StartUsPerCm = row["c0"], BleedDownToUsPerCm = row["c1"], BleedLPerH = 60 * row["bleed_gpm"] }).Value.BleedDownHours.Value,
        ["12-017"] = row => HoldFits.Of(Hold(row, row["bleed_hold_h"])).Value.Peak.Result.Value.Value,
        ["12-018"] = row => HoldFits.Of(Hold(row, 1) with { HighAlarmUsPerCm = row["c_max"] }).Value.LongestHoldHours.Value,
    };

    public static TheoryData<string> Ids => new(ByRow.Keys);

    [Theory]
    [MemberData(nameof(Ids))]
    [Trait("goal", "calculators")]
    public void Calculator_ReferenceRow_AgreesWithinItsTolerance(string id)
    {
        var row = Row(id[..2] switch { "01" => "01-cycles-and-water-balance.csv", "02" => "02-dosing.csv", _ => "12-biocide-schedule.csv" }, id);

        row.Check(ByRow[id](row));
    }

    [Fact]
    [Trait("goal", "calculators")]
    public void MaScaling_ReferenceRows_ThereAndBack()
    {
        var rows = ReferenceTable.Rows("08-meters.csv").Where(row => row.Calc == "scale_4_20").ToList();
        Assert.NotEmpty(rows);
        foreach (var row in rows)
        {
            var value = CurrentLoop.Scale(row["mA"], row["lo", "value_at_4"], row["hi", "value_at_20"]).Value;
            row.Check(value);
            Assert.Equal(row["mA"], CurrentLoop.MilliampsOf(value, row["lo", "value_at_4"], row["hi", "value_at_20"]).Value, 1e-9);
        }
    }

    private static ReferenceRow Row(string file, string id) => ReferenceTable.Rows(file).Single(row => row.Id == id);

    private static FeedCase Case(ReferenceRow row, FeedMode mode) => new() { Mode = mode, PumpLPerH = Flow(0.06 * row["pump_mL_min"]), DensityKgPerL = row["SG"] };

    private static FeedCase Paced(ReferenceRow row, double gallons, double cycles) =>
        Case(row, FeedMode.ByMakeUpVolume) with { EveryL = gallons * LitresPerGallon, Cycles = Estimate.Exact(cycles) };

    // Gallons and gallons an hour stand for litres: the ratio is the same.
    private static HoldCase Hold(ReferenceRow row, double hours) => new()
    {
        StartUsPerCm = row["c0"],
        MakeUpUsPerCm = Water(row["c_makeup"]),
        Bend = 0,
        EvaporationLPerH = Flow(60 * row["evap_gpm"]),
        VolumeL = Volume(row["V_gal"]),
        HoldHours = hours,
    };

    private static Estimate Flow(double value) => Estimate.Exact(value, "L/h");

    private static Estimate Volume(double value) => Estimate.Exact(value, "L");

    private static Estimate Water(double value) => Estimate.Exact(value, "uS/cm");
}
