using System.Globalization;
using CsCheck;
using LogBook.Domain.Cycles;
using LogBook.Domain.DosePlans;
using LogBook.Domain.Dosing;
using LogBook.Domain.Drums;
using LogBook.Domain.Programmes;
using LogBook.Domain.Quantities;
using LogBook.Domain.Tests.Reference;

namespace LogBook.Domain.Tests.DosePlans;

public sealed class DosePlansReferenceTests
{
    public static ReferenceChapter Chapter { get; } = new("12-biocide-schedule.csv", new Dictionary<string, Func<ReferenceRow, object>>
    {
        ["rotation_week"] = row => PlanCalendar.Week(Day(row, "anchor"), Day(row, "date")),
        ["feed_minutes"] = FeedMinutes,
        ["bleed_down_volume_overflow"] = row => BleedAroundDose.VolumeWhileRefilling(row["V_gal"], row["c0"], row["c1"], row["c_makeup"]).Value,
        ["bleed_down_volume_dump_refill"] = row => BleedAroundDose.VolumeBeforeRefill(row["V_gal"], row["c0"], row["c1"], row["c_makeup"]).Value,
        ["bleed_down_time_with_evap"] = row => CirculatingSystem.TimeBetween(
            row["c0"], row["c1"], row["c_makeup"], row["evap_gpm"], row["bleed_gpm"], row["V_gal"]).Value,

        // "for the row above": its flows.
        ["bleed_down_unreachable"] = _ => Above("12-015", row => CirculatingSystem.SteadyLevel(row["c_makeup"], row["evap_gpm"], row["bleed_gpm"]).Value),
        ["bleed_hold_rise"] = row => BleedAroundDose.AfterHold(
            row["c0"], row["c_makeup"], row["evap_gpm"], 0, row["V_gal"], 60 * row["bleed_hold_h"]).Value,
        ["bleed_hold_limit_h"] = row => BleedAroundDose.LongestHold(
            row["c0"], row["c_max"], row["c_makeup"], row["evap_gpm"], 0, row["V_gal"]).Value / 60,
        ["hold_time_to_fraction"] = row => Washout.TimeAbove(1, row["fraction"], row["V_gal"], row["loss_gpm"]).Value / 60,
        ["bleed_hold_for_CT"] = row => Contact(row).Value,
        ["bleed_hold_CT_unreachable"] = row => Contact(row).HasValue ? "reached" : "never",
    });

    public static TheoryData<string> Ids => Chapter.Ids;

    [Theory]
    [MemberData(nameof(Ids))]
    public void Row_Computed_AgreesWithReference(string id) => Chapter.Check(id);

    [Fact]
    public void TimeBetween_TargetAtTheSteadyLevelOrBelow_HasNoValue()
    {
        // Row 12-016: with bleed 40 and evaporation 8 the water never falls to 360 µS/cm.
        Assert.False(CirculatingSystem.TimeBetween(1400, 360, 300, 8, 40, 6000).HasValue);
        Assert.True(CirculatingSystem.TimeBetween(1400, 361, 300, 8, 40, 6000).HasValue);
    }

    [Fact]
    public void Week_AnyDay_ComesBackAfterThePlan() => Gen.Select(Gen.Int[-2000, 2000], Gen.Int[1, 8]).Sample((days, weeks) =>
    {
        var anchor = new DateOnly(2024, 1, 1);
        var day = anchor.AddDays(days);

        Assert.InRange(PlanCalendar.Week(anchor, day, weeks), 1, weeks);
        Assert.Equal(PlanCalendar.Week(anchor, day, weeks), PlanCalendar.Week(anchor, day.AddDays(7 * weeks), weeks));
        Assert.Equal((PlanCalendar.Week(anchor, day, weeks) % weeks) + 1, PlanCalendar.Week(anchor, day.AddDays(7), weeks));
    });

    [Fact]
    public void Anchor_ProgrammeFromAWednesday_IsTheMondayBefore()
    {
        var programme = new Programme { From = new DateOnly(2025, 1, 8) };

        Assert.Equal(new DateOnly(2025, 1, 6), PlanCalendar.Anchor(programme));
        Assert.Equal(4, PlanCalendar.Week(programme, new DateOnly(2025, 1, 5)));
        Assert.Equal(1, PlanCalendar.Week(programme with { WeekOneFrom = new DateOnly(2025, 1, 13) }, new DateOnly(2025, 1, 13)));
    }

    [Fact]
    public void StartFor_ThenHold_EndsAtTheLimit() => Gen.Select(Gen.Double[0.5, 8], Gen.Double[1, 12]).Sample((hold, evaporation) =>
    {
        var start = BleedAroundDose.StartFor(1500, 300, evaporation, 6000, 60 * hold).Value;

        Assert.Equal(1500, BleedAroundDose.AfterHold(start, 300, evaporation, 0, 6000, 60 * hold).Value, 1e-6);
    });

    [Fact]
    public void StartFor_HoldTooLong_HasNoValue() => Assert.Equal(
        DosePlanReasons.NeverReached, Assert.Single(BleedAroundDose.StartFor(500, 300, 12, 600, 600).Reasons));

    [Fact]
    public void VolumeWhileRefilling_TargetBelowTheMakeUp_HasNoValue() => Assert.Equal(
        DosePlanReasons.NeverReached, Assert.Single(BleedAroundDose.VolumeWhileRefilling(6000, 1400, 300, 300).Reasons));

    [Fact]
    public void DecayPerHour_HalvedInTwoHours_IsHalfOfLogTwo() => Assert.Equal(
        Math.Log(2) / 2, ContactTime.DecayPerHour(2, 1, TimeSpan.FromHours(2)).Value, 1e-12);

    // Row in mg·min/L and 1/h: minutes throughout, hours at the end.
    private static Outcomes.Computed<double> Contact(ReferenceRow row) =>
        ContactTime.ForLevelTime(row["C0_mgL"], row["decay_per_h"] / 60, row["CT_mg_min_L"]).Map(minutes => minutes / 60);

    private static object FeedMinutes(ReferenceRow row)
    {
        var density = row["SG"] * row["water_lb_per_gal"] * ExactFactors.KilogramsPerPound / ExactFactors.LitresPerUsGallon;
        var product = DrumVolume.FromMass(Dose.MassFor(row["dose_mgL"], Volume.FromUsGallons(row["V_gal"])).Value, density).Value;
        return PumpFeed.TimeFor(product, Flow.FromLitresPerHour(row["pump_gph"] * ExactFactors.LitresPerUsGallon)).Value.TotalMinutes;
    }

    private static object Above(string id, Func<ReferenceRow, object> compute) =>
        compute(ReferenceTable.Rows("12-biocide-schedule.csv").Single(row => row.Id == id));

    private static DateOnly Day(ReferenceRow row, string name) => DateOnly.ParseExact(row.TextOf(name), "yyyy-MM-dd", CultureInfo.InvariantCulture);
}
