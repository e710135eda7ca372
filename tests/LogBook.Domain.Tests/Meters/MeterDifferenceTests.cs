using CsCheck;
using LogBook.Domain.Meters;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Meters;

public sealed class MeterDifferenceTests
{
    private static readonly Meter MakeUp = new() { Code = "MU", Measures = MeterMeasures.MakeUp, Unit = "L", Digits = 5, DialMultiplier = 100, LitresPerPulse = 10 };
    private static readonly RolloverJudge Week = new(TimeSpan.FromDays(7), MaxLPerH: 5000, UsualLPerH: 2400);

    [Fact]
    [Trait("goal", "R9")]
    public void Difference_AnyTwoCounts_IsNeverNegativeAndLeadsFromOneToTheOther() =>
        Gen.Select(Gen.Int[1, 9], Gen.Double[0, 1], Gen.Double[0, 1]).Sample((digits, before, now) =>
        {
            var size = Math.Pow(10, digits);
            var (previous, current) = (Math.Floor(before * (size - 1)), Math.Floor(now * (size - 1)));

            var counts = RegisterArithmetic.Difference(previous, current, digits).Value;

            Assert.InRange(counts, 0, size - 1);
            Assert.Equal(current, (previous + counts) % size, 1e-6);
        });

    [Fact]
    [Trait("goal", "R9")]
    public void OfDial_AnyFall_IsARolloverThatThePipeCanCarry_OrHasNoValue() =>
        Gen.Select(Gen.Int[1, 99_999], Gen.Double[0, 1], Gen.Double[0.1, 90]).Sample((previous, share, days) =>
        {
            var current = Math.Floor(share * (previous - 1));
            var judge = Week with { Elapsed = TimeSpan.FromDays(days) };

            var water = MeterDifference.OfDial(MakeUp, Dial(previous), Dial(current), judge);

            if (water.HasValue)
            {
                Assert.InRange(water.Value.Value, 0, judge.MaxLPerH!.Value * 24 * days);
            }
            else
            {
                Assert.NotEmpty(water.Reasons);
            }
        });

    [Fact]
    public void OfDial_Rise_IsLitresWithMeterAndStepUncertainty()
    {
        var water = MeterDifference.OfDial(MakeUp, Dial(1000), Dial(5000), Week).Value;

        Assert.Equal(400_000, water.Value, 1e-6);
        Assert.Equal(8_000, water.Common["meter:MU"], 1e-6);
        Assert.Equal(100 / Math.Sqrt(6), water.Random, 1e-9);
    }

    [Fact]
    public void OfDial_PlausibleRollover_IsCounted() =>
        Assert.Equal(400_000, MeterDifference.OfDial(MakeUp, Dial(99_000), Dial(3_000), Week).Value.Value, 1e-6);

    [Fact]
    public void OfDial_FallBeyondThePipe_HasNoValue() => Assert.Equal(
        MeterReasons.Fell, Assert.Single(MeterDifference.OfDial(MakeUp, Dial(50_000), Dial(3_000), Week).Reasons));

    [Fact]
    public void OfDial_FallWithNothingToJudgeBy_HasNoValue() => Assert.False(
        MeterDifference.OfDial(MakeUp, Dial(99_999), Dial(1), new RolloverJudge(TimeSpan.FromDays(7), null, null)).HasValue);

    [Fact]
    public void OfDial_FallBeyondThreeTimesTheUsual_HasNoValue() => Assert.False(
        MeterDifference.OfDial(MakeUp, Dial(99_000), Dial(3_000), Week with { UsualLPerH = 500 }).HasValue);

    [Fact]
    public void OfDial_Replaced_AddsOldAndNewRegister()
    {
        var old = MakeUp with { Digits = 6, DialMultiplier = 10 };
        var current = Dial(30) with { Replaced = true, OldFinal = 200_500, NewStart = 10 };

        var water = MeterDifference.OfDial(MakeUp, Dial(200_000), current, Week, old).Value;

        Assert.Equal((500 * 10) + (20 * 100), water.Value, 1e-6);
    }

    [Fact]
    public void OfDial_ReplacedWithoutItsCounts_HasNoValue() => Assert.Equal(
        MeterReasons.Replaced, Assert.Single(MeterDifference.OfDial(MakeUp, Dial(1), Dial(5) with { Replaced = true }, Week).Reasons));

    [Fact]
    public void OfDial_NotRead_HasNoValue() => Assert.Equal(
        MeterReasons.NotRead, Assert.Single(MeterDifference.OfDial(MakeUp, new MeterReading { Meter = "MU" }, Dial(5), Week).Reasons));

    [Fact]
    public void OfDial_MoreDigitsThanTheRegister_HasNoValue() => Assert.Equal(
        MeterReasons.BeyondRegister, Assert.Single(MeterDifference.OfDial(MakeUp, Dial(1), Dial(100_000), Week).Reasons));

    [Fact]
    public void OfTotal_ResetAtTheVisits_CountsFromAfterToBefore()
    {
        var previous = Total(900) with { Before = 900, After = 0 };
        var current = Total(0) with { Before = 750, After = 0 };

        Assert.Equal(750, MeterDifference.OfTotal(MakeUp, previous, current, Week).Value.Value, 1e-9);
    }

    [Fact]
    public void OfTotal_ResetBetweenVisits_HasNoValue() => Assert.Equal(
        MeterReasons.Reset, Assert.Single(MeterDifference.OfTotal(MakeUp, Total(900), Total(100) with { Reset = true }, Week).Reasons));

    [Fact]
    public void OfTotal_FallWithoutDigits_IsNeverARollover() => Assert.Equal(
        MeterReasons.Fell, Assert.Single(MeterDifference.OfTotal(MakeUp, Total(900), Total(100), Week).Reasons));

    [Fact]
    public void CurrentLoop_ThereAndBack_ReturnsTheCurrent() => Gen.Select(Gen.Double[4, 20], Gen.Double[-100, 100], Gen.Double[101, 5000]).Sample(
        (current, low, high) => Assert.Equal(current, CurrentLoop.MilliampsOf(CurrentLoop.Scale(current, low, high).Value, low, high).Value, 1e-9));

    private static MeterReading Dial(double count) => new() { Meter = "MU", Dial = count };

    private static MeterReading Total(double count) => new() { Meter = "MU", Total = count };
}
