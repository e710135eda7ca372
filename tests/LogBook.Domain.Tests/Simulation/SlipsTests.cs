using LogBook.Domain.Simulation;
using LogBook.Domain.Simulation.Technicians;
using LogBook.Domain.Visits;
using Xunit;

namespace LogBook.Domain.Tests.Simulation;

public class SlipsTests
{
    [Fact]
    public void Apply_ManyFields_FallsOnFourOf10000()
    {
        var slips = new Slips(new SplitMix(9));
        var slipped = 0;

        for (var i = 0; i < 20000; i++)
        {
            var readings = Enumerable.Range(0, 10).Select(n => Reading($"test-{n}", 1234)).ToList();
            slips.Apply(readings, [], [], [], Slips.Share);
            slipped += readings.Count(r => r.Value != 1234);
        }

        // 80 expected of 200,000; five standard deviations to each side.
        Assert.InRange(slipped, 80 - 45, 80 + 45);
    }

    [Fact]
    public void Apply_SlippedReading_KeepsItsSizeAndLeadingDigit()
    {
        var slips = new Slips(new SplitMix(4));

        for (var i = 0; i < 500; i++)
        {
            var readings = new List<Reading> { Reading("test", 1387.5) };
            slips.Apply(readings, [], [], [], share: 1);
            Assert.InRange(readings[0].Value!.Value, 1000, 1999.9);
        }
    }

    [Fact]
    public void Apply_Counter_NeverFallsBelowTheLastOrLeaps()
    {
        var slips = new Slips(new SplitMix(4));
        var last = 0.0;
        var differs = 0;

        for (var visit = 1; visit < 400; visit++)
        {
            var meters = new List<MeterReading> { new() { Meter = "MU", Dial = 1000 + (137 * visit) } };
            slips.Apply([], meters, [], [], share: 1);
            var written = meters[0].Dial!.Value;
            differs += written != 1000 + (137 * visit) ? 1 : 0;
            if (visit > 1 && written != 1000 + (137 * visit))
            {
                Assert.InRange(written - last, 0, 2 * (1000 + (137 * visit) - last));
            }

            last = written;
        }

        Assert.InRange(differs, 10, 399);
    }

    private static Reading Reading(string test, double value) => new() { At = "tower", Test = test, Source = ReadingSource.Kit, Value = value, Unit = "mg/L" };
}
