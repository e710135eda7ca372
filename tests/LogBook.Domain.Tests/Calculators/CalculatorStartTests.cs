using LogBook.Domain.Calculators;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.SetPoints;
using LogBook.Domain.Sites;
using LogBook.Domain.Tests.Simulation;
using LogBook.Domain.Visits;

namespace LogBook.Domain.Tests.Calculators;

public sealed class CalculatorStartTests
{
    private static readonly DateOnly On = new(2025, 12, 1);

    [Fact]
    public void Of_NoVisit_BeginsWithTheProgrammeAndSaysSo()
    {
        var start = CalculatorStart.Of(History([]), On);

        Assert.Equal(4.5, start.TargetCycles!.Estimate.Value);
        Assert.Contains("programme from", start.TargetCycles.Origin.In(Language.English), StringComparison.Ordinal);
        Assert.Equal(1, start.Conductivity.Count);
        Assert.Contains("worked out for", start.MakeUp!.Origin.In(Language.English), StringComparison.Ordinal);
        Assert.Equal(0.7 * 1.26 * 700, start.EvaporationLPerH!.Estimate.Value, 1e-9);
        Assert.Equal(1.5, start.Feeds[0].PumpLPerH!.Estimate.Value);
        Assert.Contains("not measured", start.Feeds[0].PumpLPerH!.Origin.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_FourteenMakeUpReadings_LastTwelveCount()
    {
        var visits = Enumerable.Range(0, 14).Select(week => Visit(week, record => record with
        {
            Readings = [new Reading { At = "make-up", Test = "conductivity", Source = ReadingSource.Reference, Value = week < 2 ? 900 : 300 + week, Unit = "uS/cm" }],
        }));

        var start = CalculatorStart.Of(History(visits), On);

        Assert.Equal(MakeUpReadings.Most, start.Conductivity.Count);
        Assert.Equal(313, start.Conductivity.Percentile(1).Value);
        Assert.Contains("last 12 make-up readings", start.MakeUp!.Origin.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Drawdown_StandsBeforeTheRating()
    {
        var start = CalculatorStart.Of(History([Visit(1, record => record with { Drawdowns = [new Drawdown { Pump = "P-INH", Millilitres = 20, Seconds = 60 }] })]), On);

        Assert.Equal(1.2, start.Feeds[0].PumpLPerH!.Estimate.Value, 1e-9);
        Assert.Contains("drawdown of", start.Feeds[0].PumpLPerH!.Origin.In(Language.English), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_LaterVisit_IsNotLookedAt()
    {
        var late = Visit(30, record => record with { Drawdowns = [new Drawdown { Pump = "P-INH", Millilitres = 20, Seconds = 60 }] });

        Assert.Equal(1.5, CalculatorStart.Of(History([late]), On).Feeds[0].PumpLPerH!.Estimate.Value);
    }

    [Fact]
    public void Of_SettingLeftOtherwise_IsWhatTheControllerHolds() => Assert.Equal(
        1300,
        CalculatorStart.Of(History([Visit(1, record => record with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1300), Left = SettingValue.Of(1300) }] })]), On).SetPoint!.Estimate.Value);

    [Fact]
    public void Of_DrumAndPumpThatBeginInTheFuture_TodaysCount()
    {
        var college = SimulatedCollege.System;
        var history = History([], system => system with
        {
            Drums = [.. college.Drums, college.Drums[0] with { Product = "N-15", From = On.AddDays(30) }],
            Pumps = [.. college.Pumps, college.Pumps[0] with { RatedLPerH = 9, From = On.AddDays(30) }],
        });

        var (today, later) = (CalculatorStart.Of(history, On), CalculatorStart.Of(history, On.AddDays(30)));

        Assert.Equal(("P-40", 1.5), (today.Feeds[0].Product!.Code, today.Feeds[0].PumpLPerH!.Estimate.Value));
        Assert.Equal([1.5, 3.0], today.System.Pumps.Select(pump => pump.RatedLPerH!.Value));
        Assert.Equal(["P-40", "N-15"], today.System.Drums.Select(drum => drum.Product));
        Assert.Equal((null, 9.0), (later.Feeds[0].Product, later.Feeds[0].PumpLPerH!.Estimate.Value));
        Assert.Equal([3.0, 9.0], later.System.Pumps.Select(pump => pump.RatedLPerH!.Value));
    }

    private static Visit Visit(int week, Func<VisitedSystem, VisitedSystem> change)
    {
        var arrived = new DateTime(2025, 7, 7, 9, 0, 0, DateTimeKind.Utc).AddDays(7 * week);
        return new Visit
        {
            Id = Guid.CreateVersion7(new DateTimeOffset(arrived)), Site = "YAF-1", Technician = "RYA", Arrived = Moment.OfUtc(arrived), Left = Moment.OfUtc(arrived.AddHours(1)),
            Systems = [change(new VisitedSystem { System = "CT-1", Running = true, InUse = true })],
        };
    }

    private static SystemHistory History(IEnumerable<Visit> visits, Func<WaterSystem, WaterSystem>? change = null) => SystemHistory.From(
        new FirmSetUp(new ExchangeDocument
        {
            Format = "logbook-exchange",
            Version = 1,
            Sites = [new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" }],
            Products = [new Product { Code = "P-40", Name = "Inhibitor P-40", Kind = ProductKind.Inhibitor, DensityKgPerL = 1.12, DoseMgPerL = 100 }],
            Systems = [(change?.Invoke(SimulatedCollege.System) ?? SimulatedCollege.System) with { FullLoadKw = 700, Programmes = [SimulatedCollege.Programme with { MakeUp = new MakeUpWater { ConductivityUsPerCm = 300, ChlorideMgPerL = 23 } }] }],
        }),
        "YAF-1",
        "CT-1",
        visits);
}
