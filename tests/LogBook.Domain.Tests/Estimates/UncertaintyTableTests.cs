using System.Reflection;
using LogBook.Domain.Estimates;
using LogBook.Domain.Sites;

namespace LogBook.Domain.Tests.Estimates;

public sealed class UncertaintyTableTests
{
    private static readonly Drum Day = new() { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 };

    [Fact]
    public void Default_EveryCode_HasOneRowWithSourceAndBasis()
    {
        var codes = typeof(UncertaintyCodes).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => (string)field.GetValue(null)!);

        Assert.Equal(codes.Order(), UncertaintyTable.Default.Rows.Select(row => row.Code).Order());
        Assert.All(UncertaintyTable.Default.Rows, row => Assert.True(row.Basis.Length > 0 && "PRKC".Contains(row.Source) && row.Value > 0, row.Code));
    }

    [Fact]
    public void ConductivityReading_ProvedMeter_RepeatsUnderItsName()
    {
        var reading = UncertaintyTable.Default.ConductivityReading("HM-1", provedWithin30Days: true).On(1000, "uS/cm");

        // 1 % scatter with 1 % compensation, and 1.5 % that repeats.
        Assert.Equal(1000 * Math.Sqrt(0.0002), reading.Random, 1e-9);
        Assert.Equal(15, reading.Common["hand-meter:HM-1"], 1e-9);
    }

    [Fact]
    public void ConductivityReading_UnprovedMeter_RepeatsTwiceAsMuch()
    {
        var reading = UncertaintyTable.Default.ConductivityReading("HM-1", provedWithin30Days: false, waterCelsius: null).On(1000, "uS/cm");

        Assert.Equal(30, reading.Common["hand-meter:HM-1"], 1e-9);
        Assert.Equal(1000 * Math.Sqrt(0.0005), reading.Random, 1e-9);
    }

    [Fact]
    public void DropTest_WithLot_KeepsTheSameTotal()
    {
        var alone = UncertaintyTable.Default.DropTest(5).On(100, "mg/L");
        var ofLot = UncertaintyTable.Default.DropTest(5, "CL-2291").On(100, "mg/L");

        Assert.Equal(Math.Sqrt(25 + (25 / 12.0)), alone.StandardUncertainty, 1e-9);
        Assert.Equal(alone.StandardUncertainty, ofLot.StandardUncertainty, 1e-9);
        Assert.True(ofLot.Common.ContainsKey("lot:CL-2291"));
    }

    [Fact]
    public void BleedValve_TimedLately_IsFourTimesBetter()
    {
        var timed = UncertaintyTable.Default.BleedValve(timedWithin180Days: true).On(1000, "L/h");
        var onFile = UncertaintyTable.Default.BleedValve(timedWithin180Days: false).On(1000, "L/h");

        Assert.Equal(50, timed.StandardUncertainty, 1e-9);
        Assert.Equal(200, onFile.StandardUncertainty, 1e-9);
    }

    [Fact]
    public void WaterMeter_PaddleWheel_IsFivePercent() => Assert.Equal(
        50, UncertaintyTable.Default.WaterMeter(WaterMeterKind.PaddleWheel, "MU").On(1000, "L").Common["meter:MU"], 1e-9);

    [Theory]
    [InlineData("cm", 1, "cm")]
    [InlineData("[in_i]", 1, "cm")]
    [InlineData("%", 1.2, "L")]
    [InlineData("L", 1.2, "L")]
    [InlineData("kg", 0.5, "kg")]
    public void DrumLevel_ByUnit_TakesDipGaugeOrScale(string unit, double expected, string expectedUnit)
    {
        var u = UncertaintyTable.Default.DrumLevel(Day, unit).Value;

        Assert.Equal(expected, u.Value, 1e-9);
        Assert.Equal(expectedUnit, u.Unit);
    }

    [Fact]
    public void With_OneValueChanged_LeavesTheDefaultAlone()
    {
        var own = UncertaintyTable.Default.With(UncertaintyCodes.WaterMeter, 1, "tested on site");

        Assert.Equal(0.01, own.Share(UncertaintyCodes.WaterMeter), 1e-12);
        Assert.Equal(0.02, UncertaintyTable.Default.Share(UncertaintyCodes.WaterMeter), 1e-12);
    }
}
