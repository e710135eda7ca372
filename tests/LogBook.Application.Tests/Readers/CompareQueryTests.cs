using LogBook.Application.Data;
using LogBook.Application.History;
using LogBook.Domain.Assessments;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Readers;

public sealed class CompareQueryTests
{
    private static readonly DateOnly From = new(2025, 3, 1);
    private static readonly DateOnly To = new(2025, 8, 31);

    [Fact]
    public async Task OfAsync_TwoSystems_HaveOneLineEachInOneUnit()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var (first, second) = (await firm.AddSiteAsync("YAF-1"), await firm.AddSiteAsync("NUR-1", "Nurlescombe General Hospital"));
        await firm.AddVisitAsync(first, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));
        await firm.AddVisitAsync(first, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7), 1360));
        var other = ReadingFirm.VisitOf("NUR-1", ReadingFirm.Start.AddDays(1), 1.4);
        await firm.AddVisitAsync(second, other with
        {
            Systems =
            [
                other.Systems[0] with
                {
                    Readings =
                    [
                        other.Systems[0].Readings[0] with { Unit = "mS/cm" },
                        other.Systems[0].Readings[0] with { Value = 1200, Source = ReadingSource.Controller },
                    ],
                },
            ],
        });

        var view = await Query(firm).OfAsync(ReadingFirm.Supervisor, ["NUR-1/CT-1", "yaf-1/ct-1", "XXX-1/CT-1"], null, From, To);

        Assert.Equal(("tower.conductivity", "uS/cm"), (view.Key, view.Panel!.Unit));
        Assert.Equal(
            [("NUR-1 Cooling tower 1", "1400"), ("YAF-1 Cooling tower 1", "1350 1360")],
            view.Panel.Series.Select(series => (series.Name!.In(Language.English), string.Join(' ', series.Points.Select(point => point.Value)))));
        Assert.Equal([1540.0, 1540.0], view.Systems.Select(system => system.Range!.High!.Value));
        Assert.Empty(view.Panel.Bands);
    }

    [Fact]
    public async Task OfAsync_Figures_AreComparedWithUncertaintyAndByProduct()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var (first, second) = (await firm.AddSiteAsync("YAF-1"), await firm.AddSiteAsync("NUR-1", "Nurlescombe General Hospital"));
        foreach (var (site, code, water, used) in new[] { (first, "YAF-1", 140_000.0, 14.0), (second, "NUR-1", 70_000.0, 6.9) })
        {
            var end = ReadingFirm.Start.AddDays(7);
            var row = await firm.AddVisitAsync(site, ReadingFirm.VisitOf(code, end, 1350));
            foreach (var (figure, about, value, uncertainty, unit) in new[] { (FigureCodes.MakeUp, "", water, water / 100, "L"), (FigureCodes.ProductUsed, "D-INH", used, 0.2, "L"), (FigureCodes.BleedHours, "bleed", 30, 0.3, "h") })
            {
                await firm.AddAsync(new FigureRow
                {
                    CustomerId = site.Customer, SiteId = site.Site, SystemId = site.System, VisitRowId = row, Code = figure, About = about, From = ReadingFirm.Start, To = end, Value = value, StandardUncertainty = uncertainty, Unit = unit,
                });
            }
        }

        var view = await Query(firm).OfAsync(ReadingFirm.Supervisor, ["YAF-1/CT-1", "NUR-1/CT-1"], "figures.make-up-per-day", From, To);

        Assert.Equal(["figures.make-up-per-day", "figures.bleed-hours-per-volume", "figures.product-per-volume.D-INH"], view.Figures.Select(figure => figure.Key));
        Assert.Equal(("figures.make-up-per-day", "m3/d", "Make-up a day"), (view.Key, view.Panel!.Unit, view.Panel.Title!.En));
        Assert.Equal([(20.0, 19.6, 20.4), (10.0, 9.8, 10.2)], view.Panel.Series.Select(series => (Math.Round(series.Points.Single().Value!.Value, 9), Math.Round(series.Points[0].Low!.Value, 9), Math.Round(series.Points[0].High!.Value, 9))));
        Assert.All(view.Systems, system => Assert.Null(system.Range));

        // 20.0 less 10.0 m3/d; standard uncertainties of 0.2 and 0.1.
        var water1 = view.Figures[0];
        Assert.Equal((10.0, 0.447, true), (Math.Round(water1.Difference!.Value, 9), Math.Round(water1.Difference.ExpandedUncertainty, 3), water1.IsClear));

        // 100 and 98.6 mL/m3: nearer to each other than they are known.
        Assert.False(view.Figures[2].IsClear);
    }

    [Fact]
    [Trait("goal", "S1")]
    public async Task OfAsync_SystemsOfAnotherCustomer_AreNotThere()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var (own, other) = (await firm.AddSiteAsync("YAF-1"), await firm.AddSiteAsync("NUR-1", "Nurlescombe General Hospital"));
        await firm.AddVisitAsync(own, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));
        await firm.AddVisitAsync(other, ReadingFirm.VisitOf("NUR-1", ReadingFirm.Start, 1400));

        var view = await Query(firm).OfAsync(ReadingFirm.CustomerOf(own.Customer), ["NUR-1/CT-1", "YAF-1/CT-1"], null, From, To);

        Assert.Equal(["YAF-1/CT-1"], view.Systems.Select(system => system.Key));
        Assert.Equal(["YAF-1/CT-1"], view.All.Select(system => system.Key));
        Assert.Single(view.Panel!.Series);
    }

    [Fact]
    public async Task OfAsync_MoreThanThree_KeepsTheFirstThree()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        foreach (var site in new[] { "AAA-1", "BBB-1", "CCC-1", "DDD-1" })
        {
            await firm.AddSiteAsync(site);
        }

        var view = await Query(firm).OfAsync(ReadingFirm.Supervisor, ["DDD-1/CT-1", "AAA-1/CT-1", "BBB-1/CT-1", "CCC-1/CT-1"], null, From, To);

        Assert.Equal(["DDD-1/CT-1", "AAA-1/CT-1", "BBB-1/CT-1"], view.Systems.Select(system => system.Key));
        Assert.Null(view.Panel);
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task OfAsync_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        async Task AddAsync(string code) => await firm.AddVisitAsync(await firm.AddSiteAsync(code), ReadingFirm.VisitOf(code, ReadingFirm.Start, 1350));
        await AddAsync("AAA-0");
        await AddAsync("AAA-1");
        Task<int> CountAsync() => firm.CountAsync(() => Query(firm).OfAsync(ReadingFirm.Supervisor, ["AAA-0/CT-1", "AAA-1/CT-1"], null, From, To));
        var few = await CountAsync();
        for (var i = 2; i < 20; i++)
        {
            await AddAsync($"AAA-{i}");
        }

        Assert.Equal((few, 4), (await CountAsync(), few));
    }

    private static CompareQuery Query(ReadingFirm firm) => new(firm.Store, firm.Clock);
}
