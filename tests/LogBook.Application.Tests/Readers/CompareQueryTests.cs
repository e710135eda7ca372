using LogBook.Application.History;
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

        Assert.Equal((few, 3), (await CountAsync(), few));
    }

    private static CompareQuery Query(ReadingFirm firm) => new(firm.Store, firm.Clock);
}
