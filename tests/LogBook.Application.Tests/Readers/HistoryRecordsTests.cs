using LogBook.Application.History;
using LogBook.Domain.Exchange;
using LogBook.Domain.History;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Readers;

public sealed class HistoryRecordsTests
{
    private static readonly DateTime Start = ReadingFirm.Start;

    private static readonly WaterSystem Tower = new()
    {
        Site = "YAF-1", Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating,
        Meters =
        [
            new Meter { Code = "MU", Measures = MeterMeasures.MakeUp, Unit = "m3", Digits = 5, DialMultiplier = 10 },
            new Meter { Code = "MU", Measures = MeterMeasures.MakeUp, Unit = "L", Digits = 7, From = new DateOnly(2025, 3, 10) },
        ],
        Drums =
        [
            new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 60 },
            new Drum { Code = "D-B1", Product = "N-15", Shape = DrumShape.ByWeight, CapacityL = 25, TareKg = 2 },
        ],
    };

    [Fact]
    public void Levels_ByDepthAndByWeight_AreLitresWithTheirUncertainty()
    {
        var history = HistoryOf(
            new VisitedSystem { System = "CT-1", Drums = [new DrumReading { Drum = "D-INH", Level = 41.5, Unit = "cm" }, new DrumReading { Drum = "D-B1", Level = 12.5, Unit = "kg" }] },
            new VisitedSystem { System = "CT-1", Drums = [new DrumReading { Drum = "D-INH", Level = 70, Unit = "cm" }, new DrumReading { Drum = "D-XX", Level = 10, Unit = "cm" }] });

        var panel = HistoryRecords.PanelOf(history, "records.levels")!;

        // 60 L over 60 cm: a litre a centimetre. 12.5 kg less 2 kg of drum at 1.05 kg/L.
        Assert.Equal([("D-INH", 41.5), ("D-B1", 10.0)], panel.Series.Select(series => (series.Name!.En, Math.Round(series.Points.Single().Value!.Value, 6))));
        Assert.All(panel.Series, series => Assert.True(series.Points[0].Low < series.Points[0].Value && series.Points[0].Value < series.Points[0].High));

        // A level above the brim, and a drum that nobody knows, are told and not drawn.
        Assert.Equal(("L", 2), (panel.Unit, panel.InOtherUnits));
    }

    [Fact]
    public void Hours_SetToZero_AreNotJoinedOverIt()
    {
        var history = HistoryOf(
            Hours(new HoursReading { Output = "bleed", Hours = 100 }),
            Hours(new HoursReading { Output = "bleed", Hours = 110, Before = 110, After = 0 }),
            Hours(new HoursReading { Output = "bleed", Hours = 9 }),
            Hours(new HoursReading { Output = "bleed", Hours = 5, Reset = true }));

        var series = Assert.Single(HistoryRecords.PanelOf(history, "records.hours")!.Series);

        Assert.Equal([100.0, 110, 9, 5], series.Points.Select(point => point.Value!.Value));
        Assert.Equal([2, 3], series.Gaps.Order());
    }

    [Fact]
    public void Dial_RenewedInAnotherUnit_StandsInThatOfTheNewOneBesideTheTotal()
    {
        var history = HistoryOf(
            Meters(new MeterReading { Meter = "mu", Dial = 4821, Total = 48 }),
            Meters(new MeterReading { Meter = "MU", Dial = 120, Total = 49, Replaced = true }),
            Meters(new MeterReading { Meter = "MU", Dial = 950 }));

        var panel = HistoryRecords.PanelOf(history, "records.dial.MU")!;

        Assert.Equal("L", panel.Unit);
        Assert.Equal(["dial", "controller's total"], panel.Series.Select(series => series.Name!.En));

        // The old dial counted tens of cubic metres.
        Assert.Equal([48_210_000.0, 120, 950], panel.Series[0].Points.Select(point => point.Value!.Value));
        Assert.Equal([1], panel.Series[0].Gaps);
        Assert.Equal((ReadingSource.Controller, 48_000.0, 49.0), (panel.Series[1].Source, panel.Series[1].Points[0].Value, panel.Series[1].Points[1].Value));
        Assert.Equal("Hidrômetro MU", panel.Title!.Pt);
    }

    [Fact]
    public async Task OfAsync_Records_AreOfferedAndShownWhenAskedFor()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var visit = ReadingFirm.VisitOf("YAF-1", Start, 1350);
        await firm.AddVisitAsync(site, visit with
        {
            Systems = [visit.Systems[0] with { HoursRun = [new HoursReading { Output = "bleed", Hours = 118.4 }], Meters = [new MeterReading { Meter = "MU", Dial = 48211 }] }],
        });

        var view = await new SiteHistoryQuery(firm.Store, firm.Clock).OfAsync(
            ReadingFirm.Supervisor, "YAF-1", "CT-1", new DateOnly(2025, 3, 1), new DateOnly(2025, 3, 31), ["records.hours", "tower.conductivity"]);

        Assert.Equal(["tower.conductivity", "records.hours", "records.dial.MU"], view!.Keys);
        Assert.Equal(["records.hours", "tower.conductivity"], view.Panels.Select(panel => panel.Key));
        var table = System.Text.Encoding.UTF8.GetString(HistoryTable.Of(view, Language.English));
        Assert.Contains("hours run,bleed,,,118.4,,h", table, StringComparison.Ordinal);
        Assert.Contains("meter dial,MU,,,48211", table, StringComparison.Ordinal);
    }

    private static VisitedSystem Hours(params HoursReading[] hours) => new() { System = "CT-1", HoursRun = hours };

    private static VisitedSystem Meters(params MeterReading[] meters) => new() { System = "CT-1", Meters = meters };

    private static SystemHistory HistoryOf(params VisitedSystem[] records) => new(
        new FirmSetUp(new ExchangeDocument
        {
            Format = ExchangeReader.Format,
            Version = ExchangeReader.Version,
            Products = [new Product { Code = "N-15", Name = "Biocide N-15", Kind = ProductKind.Biocide, DensityKgPerL = 1.05 }],
        }),
        new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" },
        Tower,
        records.Select((record, week) => new SystemVisit(ReadingFirm.VisitOf("YAF-1", Start.AddDays(7 * week), 1350) with { Systems = [record] }, record)));
}
