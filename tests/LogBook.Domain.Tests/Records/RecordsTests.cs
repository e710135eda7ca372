using LogBook.Domain.Estimates;
using LogBook.Domain.Records;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Assessments;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Records;

/// <summary>Numbers worked out by hand from what the visits say; the formulas are those of Reference/05-probe-drift.csv and 08-meters.csv.</summary>
public sealed class RecordsTests
{
    [Fact]
    public void Probe_Cleaned_SplitsTheErrorIntoFoulingAndCalibration()
    {
        // Display 1,100 against 1,200: −8.33 %. After cleaning 1,180: −1.67 %. Cleaning took −6.67 % away.
        var builder = new HistoryBuilder().Visit(0).Visit(28, record => record with { Probes = [HistoryBuilder.Probe(1_100, 1_200, 1_200) with { AfterCleaning = 1_180, Calibrated = true }] });

        var point = Assert.Single(ProbeRecord.Of(Latest(builder))).Points[1];

        Assert.Equal((-8.3333, -6.6667, -1.6667), (Round(point.Facts.ErrorFound.Value), Round(point.Split.Value.Fouling), Round(point.Split.Value.Calibration)));
        Assert.True(point.IsCleaned);
        Assert.Equal(5, point.TolerancePercent);
    }

    [Fact]
    public void Probe_NotCleaned_HasNoSplit()
    {
        var point = Assert.Single(Assert.Single(ProbeRecord.Of(Latest(new HistoryBuilder().Visit(0)))).Points);

        Assert.False(point.Split.HasValue);
        Assert.False(point.IsCleaned);
    }

    [Fact]
    public void Probe_DriftsEvenly_HasOneLineForEachSeries()
    {
        // −1 % every 14 days: −2.14 % in 30 days. Calibrated on the fifth visit, then the same again.
        var builder = new HistoryBuilder { VisitEveryDays = 14 };
        for (var i = 0; i < 10; i++)
        {
            var error = -1.0 * (i % 5);
            var isFifth = i == 4;
            builder.Visit(14 * i, record => record with { Probes = [HistoryBuilder.Probe(1_200 * (1 + (error / 100)), 1_200, isFifth ? 1_200 : null) with { Calibrated = isFifth ? true : null }] });
        }

        var lines = Assert.Single(ProbeRecord.Of(Latest(builder))).Lines;

        Assert.Equal(2, lines.Count);
        Assert.All(lines, line => Assert.Equal(-30.0 / 14, line.PerMonth.Slope, 6));
        Assert.Equal((0.0, -4.0, (double?)null), (Math.Round(lines[0].FromPercent, 6), Math.Round(lines[0].ToPercent, 6), lines[0].Low));
        Assert.Equal(-5.0, lines[1].ToPercent, 6);
        Assert.NotNull(lines[1].Low);
    }

    [Fact]
    public void Meter_PulsesLost_AreDialMinusTotalInPulses()
    {
        // The total counts nine tenths of what passes the dial: −10 %.
        var builder = new HistoryBuilder { TotalShare = 0.9 }.Visit(0).Visit(28);
        var record = Assert.Single(MeterRecord.Of(Latest(builder)));
        var point = record.Points[1];
        var perPulse = record.Meter.LitresPerPulse ?? 1 / record.Meter.PulsesPerLitre ?? 1;

        Assert.Equal(-10, point.TotalAgainstDial.Value.Value, 2);
        Assert.Equal(28 * 19_400 * 0.1 / perPulse, point.PulsesLost.Value.Value, 0);
        Assert.True(point.TotalAgainstDial.Value.ExpandedUncertainty < 0.5, "the meter's own 2 % cancels between dial and total");
        Assert.Equal(19_400, point.PerDay.Value.Value, 0);
        Assert.Equal(28, point.Days!.Value, 6);
        Assert.Null(record.Points[0].Days);
    }

    [Fact]
    public void Meter_Rollover_IsSaidAndTheWaterStaysRight()
    {
        // 10,000 L and 60,000 L a day: seven digits are passed between day 140 (8,410,000 L) and day 168 (10,090,000 L).
        var builder = new HistoryBuilder { MakeUpPerDayL = 60_000 }.Every(28, 6);
        Assert.DoesNotContain(Assert.Single(MeterRecord.Of(Latest(builder))).Points, point => point.RolledOver);

        builder.Visit(168);

        var last = Assert.Single(MeterRecord.Of(Latest(builder))).Points[^1];
        Assert.True(last.RolledOver);
        Assert.Equal(60_000, last.PerDay.Value.Value, 0);
    }

    [Fact]
    public void Pump_MillilitresPerHour_AreTheDropOverTheHoursRun()
    {
        // 0.3849 L a day in 0.3 h a day: 1,283 mL for each hour run.
        var builder = new HistoryBuilder().Every(14, 14);

        var record = Assert.Single(PumpRecord.Of(Latest(builder)), record => record.Pump.Drum == "D-INH");

        var last = record.Points[^1].MillilitresPerHour!;
        Assert.InRange(1_283, last.Low, last.High);
        Assert.True(Math.Abs(last.Value - 1_283) < 0.06 * 1_283, $"{last.Value} mL/h");
        Assert.Equal(1_000 * record.Pump.RatedLPerH, record.PlateMillilitresPerHour);
    }

    [Fact]
    public void Pump_Renewed_IsOneRecordAgainstThePlateOfTheNewOne()
    {
        var builder = new HistoryBuilder
        {
            System = system => system with { Pumps = [system.Pumps[0] with { RatedLPerH = 5, From = new DateOnly(2025, 4, 1) }, system.Pumps[0]] },
        }.Every(14, 14);

        var record = Assert.Single(PumpRecord.Of(Latest(builder)));

        Assert.Equal((5.0, 5_000.0), (record.Pump.RatedLPerH!.Value, record.PlateMillilitresPerHour!.Value));
    }

    [Fact]
    public void Checks_OfHandMeters_AreAgainstTheirStandards()
    {
        var builder = new HistoryBuilder().Visit(0);
        var firm = builder.Build().Firm;

        var checks = StandardCheck.Of(firm, ["hm-1", "HM-1", "unknown"]);

        Assert.NotEmpty(checks);
        Assert.All(checks, check => Assert.Equal(100 * (check.Check.Read - check.Check.Standard) / check.Check.Standard, check.ErrorPercent!.Value, 9));
        Assert.Equal(checks.OrderByDescending(check => check.Check.At.Utc), checks);
    }

    [Fact]
    public void Nothing_BeforeTheFirstVisit()
    {
        Assert.Empty(ProbeRecord.Of(null));
        Assert.Empty(MeterRecord.Of(null));
        Assert.Empty(PumpRecord.Of(null));
    }

    private static double Round(Estimate estimate) => Math.Round(estimate.Value, 4);

    private static VisitFacts Latest(HistoryBuilder builder)
    {
        var history = builder.Build();
        VisitFacts? latest = null;
        foreach (var visit in history.Visits)
        {
            latest = new VisitFacts(history, visit, latest);
        }

        return latest!;
    }
}
