using LogBook.Domain.Intervals;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Intervals;

public class HoursBetweenTests
{
    [Fact]
    public void Of_TwoReadings_IsTheirDifferenceWithTwoSteps()
    {
        var hours = HoursBetween.Of(Hours(100), Hours(118.4), 672).Value;

        // A display step of 0.1 h at either end: 0.1 / sqrt(12) × sqrt(2) = 0.0408 h.
        Assert.Equal(18.4, hours.Value, 1e-9);
        Assert.Equal(0.0408, hours.StandardUncertainty, 0.0001);
    }

    [Fact]
    public void Of_ResetBetween_IsNotKnown() =>
        Assert.Equal("reset-without-last-count", HoursBetween.Of(Hours(100), Hours(12) with { Reset = true }, 672).Reasons[0].Code);

    [Fact]
    public void Of_ResetAtTheVisit_CountsToBefore() =>
        Assert.Equal(20, HoursBetween.Of(Hours(100), Hours(0) with { Before = 120, After = 0 }, 672).Value.Value, 1e-9);

    [Fact]
    public void Of_ResetAtTheEarlierVisit_CountsFromAfter() =>
        Assert.Equal(15, HoursBetween.Of(Hours(120) with { Before = 120, After = 0 }, Hours(15), 672).Value.Value, 1e-9);

    [Fact]
    public void Of_Fell_IsNotKnown() => Assert.Equal("went-backwards", HoursBetween.Of(Hours(100), Hours(90), 672).Reasons[0].Code);

    [Fact]
    public void Of_MoreHoursThanPassed_IsNotKnown() => Assert.Equal("more-hours-than-passed", HoursBetween.Of(Hours(100), Hours(800), 672).Reasons[0].Code);

    private static HoursReading Hours(double hours) => new() { Output = "bleed", Hours = hours };
}
