using LogBook.Application.History;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;

namespace LogBook.Application.Tests.Readers;

public sealed class HistoryMarksTests
{
    [Fact]
    public async Task Photos_OfTheSystemAndOfTheVisit_AreMarksOnTheirMoment()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        await firm.AddVisitAsync(site, visit with
        {
            Systems = [.. visit.Systems, new VisitedSystem { System = "CT-2" }],
            Photos =
            [
                new Photo { Id = Guid.CreateVersion7(), Of = "CT-1/meters/MU", TakenAt = Moment.OfUtc(ReadingFirm.Start.AddMinutes(10)) },
                new Photo { Id = Guid.CreateVersion7(), Of = "CT-2/basin" },
                new Photo { Id = Guid.CreateVersion7(), Of = "roof" },
            ],
        });

        var view = await new SiteHistoryQuery(firm.Store, firm.Clock).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", new DateOnly(2025, 3, 1), new DateOnly(2025, 3, 31));

        Assert.Equal(
            [("Photo: roof", ReadingFirm.Start), ("Photo: meters/MU", ReadingFirm.Start.AddMinutes(10))],
            view!.Marks.Where(mark => mark.Kind == HistoryMarkKind.Photo).Select(mark => (mark.Words.In(Language.English), mark.At)));
    }

    [Fact]
    public async Task All_AskedFor_ShowsEveryReadingOnOneAxis()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        string[] tests = ["chloride", "calcium", "silica", "alkalinity", "iron", "inhibitor", "sulphate"];
        await firm.AddVisitAsync(site, visit with
        {
            Systems = [visit.Systems[0] with { Readings = [.. visit.Systems[0].Readings, .. tests.Select(test => new Reading { At = "tower", Test = test, Value = 5, Unit = "mg/L" })] }],
        });

        var view = await new SiteHistoryQuery(firm.Store, firm.Clock).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", new DateOnly(2025, 3, 1), new DateOnly(2025, 3, 31), ["all"]);

        Assert.Equal(tests.Length + 1, view!.Panels.Count);
    }
}
