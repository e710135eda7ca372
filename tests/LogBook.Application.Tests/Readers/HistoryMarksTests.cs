using LogBook.Application.History;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
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
    public async Task Work_OfEachKind_IsAMarkInItsRowAndOnItsMoment()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var visit = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        await firm.AddVisitAsync(site, visit with
        {
            Systems =
            [
                visit.Systems[0] with
                {
                    Readings =
                    [
                        .. visit.Systems[0].Readings,
                        new Reading { At = "tower", Test = "dip-slide", Value = 1000, Unit = "[CFU]/mL", Qualifier = "<", TakenAt = Moment.OfUtc(ReadingFirm.Start), ResultAt = Moment.OfUtc(ReadingFirm.Start.AddDays(2)) },
                    ],
                    Probes = [new ProbeReading { Probe = "C1", Of = ProbeKind.Conductivity, AsFound = 1260, AfterCleaning = 1342, AsLeft = 1361, Calibrated = true, Unit = "uS/cm" }],
                    Drums = [new DrumReading { Drum = "D-INH", Level = 20, Unit = "cm", AddedL = 25 }, new DrumReading { Drum = "D-B1", Level = 5, Unit = "cm", Swapped = true }],
                    Events = [new VisitEvent { Type = EventType.Cleaned, At = Moment.OfUtc(ReadingFirm.Start.AddHours(-20)), Note = "basin" }, new VisitEvent { Type = EventType.PowerLost }],
                },
            ],
        });
        await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, new DateOnly(2025, 3, 4));

        var view = await new SiteHistoryQuery(firm.Store, firm.Clock).OfAsync(ReadingFirm.Supervisor, "YAF-1", "CT-1", new DateOnly(2025, 3, 1), new DateOnly(2025, 3, 31));

        var (at, noon) = (ReadingFirm.Start, new DateTime(2025, 3, 4, 12, 0, 0, DateTimeKind.Unspecified));
        Assert.Equal(
            [
                (HistoryMarkKind.Cleaning, at.AddHours(-20), "Cleaned: basin"),
                (HistoryMarkKind.Delivery, at, "D-INH: 25\u00a0L added"),
                (HistoryMarkKind.Delivery, at, "D-B1: container exchanged"),
                (HistoryMarkKind.Calibration, at, "C1 cleaned: 1260\u00a0µS/cm → 1342\u00a0µS/cm"),
                (HistoryMarkKind.Calibration, at, "C1 calibrated: 1342\u00a0µS/cm → 1361\u00a0µS/cm"),
                (HistoryMarkKind.Event, at, "Power lost"),
                (HistoryMarkKind.Finding, noon, FindingTexts.NameOf(FindingKinds.WaterLoss).En),
                (HistoryMarkKind.Result, at.AddDays(2), "Dip slide: < 1000\u00a0CFU/mL"),
            ],
            view!.Marks.Select(mark => (mark.Kind, mark.At, mark.Words.In(Language.English))));
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
