using LogBook.Application.History;
using LogBook.Testing.Readers;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.History;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;

namespace LogBook.Application.Tests.Readers;

public sealed class SiteHistoryQueryTests
{
    private static readonly DateOnly From = new(2025, 3, 1);
    private static readonly DateOnly To = new(2025, 8, 31);

    [Fact]
    public async Task OfAsync_ProgrammeChanges_BandStepsWithIt()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1500));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(120), 1500));

        var view = await Query(firm).OfAsync(ReadingFirm.Supervisor, "yaf-1", "ct-1", From, To);

        var panel = Assert.Single(view!.Panels);
        Assert.Equal([(From, new DateOnly(2025, 6, 2), 1485.0), (new DateOnly(2025, 6, 2), To.AddDays(1), 1540.0)], panel.Bands.Select(band => (band.From, band.To, band.High!.Value)));
        Assert.Equal([RangeStanding.Above, RangeStanding.Inside], panel.Series.Single().Points.Select(point => point.Standing));
        Assert.Equal([1350.0, 1400.0], panel.SetPoints.Select(line => line.Low!.Value));
    }

    [Fact]
    public void PanelOf_RangeInAnotherUnitOrBasis_IsDrawnInThatOfThePanel()
    {
        var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var tower = new WaterSystem
        {
            Site = "YAF-1", Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating,
            Programmes =
            [
                new Programme
                {
                    From = new DateOnly(2025, 1, 6), SetPointUsPerCm = 1350,
                    Ranges =
                    [
                        new TestRange { At = "tower", Test = "conductivity", Low = 1.215, High = 1.485, Unit = "mS/cm" },
                        new TestRange { At = "tower", Test = "calcium", High = 200, Unit = "mg/L", Basis = "as Ca" },
                    ],
                },
            ],
        };
        var history = new SystemHistory(
            new FirmSetUp(new ExchangeDocument { Format = ExchangeReader.Format, Version = ExchangeReader.Version }),
            new Site { Code = "YAF-1", Customer = "YAF", Name = "Yaffleford College", TimeZone = "Europe/London" },
            tower,
            [new SystemVisit(visit, visit.Systems[0])]);

        var conductivity = HistoryBuilder.PanelOf(history, "tower.conductivity", From, To, "uS/cm");
        var band = Assert.Single(conductivity.Bands);
        Assert.Equal((1215, 1485), (Math.Round(band.Low!.Value, 6), Math.Round(band.High!.Value, 6)));
        var siemens = HistoryBuilder.PanelOf(history, "tower.conductivity", From, To);
        Assert.Equal(("mS/cm", 1.35), (siemens.Unit, Math.Round(Assert.Single(siemens.SetPoints).Low!.Value, 9)));

        // 200 mg/L as Ca are 499.5 mg/L as CaCO3 (100.087 over 40.078), the basis in which the readings are drawn.
        Assert.InRange(Assert.Single(HistoryBuilder.PanelOf(history, "tower.calcium", From, To).Bands).High!.Value, 499.4, 499.6);
    }

    [Fact]
    public async Task OfAsync_VisitsMissing_LineHasGap()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        foreach (var week in new[] { 0, 1, 2, 3, 6, 7 })
        {
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7 * week), 1350));
        }

        var view = await Query(firm).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", From, To);

        Assert.Equal([4], view!.Panels[0].Series[0].Gaps);
    }

    [Fact]
    public async Task OfAsync_VoidVisit_IsLeftOut()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(1), 13500), isVoid: true);

        var view = await Query(firm).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", From, To);

        Assert.Equal(1350, Assert.Single(Assert.Single(view!.Panels[0].Series).Points).Value);
    }

    [Fact]
    public async Task OfAsync_SettingsAndDeliveries_AreMarks()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var record = visit.Systems[0] with
        {
            Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1350), Left = SettingValue.Of(1395) }],
            Drums = [new DrumReading { Drum = "D-INH", Level = 20, Unit = "cm", AddedL = 25 }],
        };
        var next = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7), 1350);
        await firm.AddVisitAsync(site, visit with { Systems = [record] });
        await firm.AddVisitAsync(site, next with { Systems = [next.Systems[0] with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1000) }] }] });

        var view = await Query(firm).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", From, new DateOnly(2025, 5, 31));

        Assert.Equal(
            ["set point: 1350\u00a0µS/cm → 1395\u00a0µS/cm", "D-INH: 25\u00a0L added", "set point: left at 1395\u00a0µS/cm, found at 1000\u00a0µS/cm"],
            view!.Marks.Select(mark => mark.Words.In(Domain.Languages.Language.English)));
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task OfAsync_ForeignCustomer_IsAbsent()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var own = await firm.AddSiteAsync("YAF-1");
        var other = await firm.AddSiteAsync("NUR-1", "Nurlescombe General Hospital");
        await firm.AddFindingAsync(own, FindingKinds.WaterLoss, Severity.Plan, new DateOnly(2025, 3, 3));
        await firm.AddVisitAsync(own, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));

        Assert.Null(await Query(firm).OfAsync(ReadingFirm.CustomerOf(other.Customer), "YAF-1", "CT-1", From, To));
        var seen = await Query(firm).OfAsync(ReadingFirm.CustomerOf(own.Customer), "YAF-1", "CT-1", From, To);
        Assert.Single(seen!.Visits);
        Assert.Empty(seen.Findings);
        Assert.DoesNotContain(seen.Marks, mark => mark.Kind == HistoryMarkKind.Finding);
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task OfAsync_TwentyTimesTheVisits_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));
        var few = await firm.CountAsync(() => Query(firm).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", From, To));
        for (var i = 1; i < 20; i++)
        {
            await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7 * i), 1350 + i));
            await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, new DateOnly(2025, 3, 3).AddDays(i));
        }

        var many = await firm.CountAsync(() => Query(firm).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", From, To));

        Assert.Equal(few, many);
        Assert.InRange(many, 1, 6);
    }

    private static SiteHistoryQuery Query(ReadingFirm firm) => new(firm.Store, firm.Clock);
}
