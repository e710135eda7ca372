using LogBook.Domain.Rounds.Planning;
using LogBook.Application.DueLists;
using LogBook.Testing.Readers;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;

namespace LogBook.Application.Tests.Readers;

public sealed class TodaysRoundQueryTests
{
    [Fact]
    public async Task OfAsync_Technician_IsToldWhatChangedSinceTheOwnLastVisit()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350));
        var other = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(7), 1350, "TNU");
        await firm.AddVisitAsync(site, other with
        {
            Systems = [other.Systems[0] with { Settings = [new SettingReading { Name = "setPointUsPerCm", Found = SettingValue.Of(1350), Left = SettingValue.Of(1395) }] }],
        });
        await firm.AddFindingAsync(site, FindingKinds.WaterLoss, Severity.Plan, new DateOnly(2025, 3, 10));
        await firm.AddFindingAsync(site, FindingKinds.FeedLow, Severity.Plan, new DateOnly(2025, 2, 10));

        var round = await Query(firm).OfAsync(ReadingFirm.Technician);

        var stop = Assert.Single(round!.Stops);
        Assert.Equal(new DateOnly(2025, 3, 3), stop.OwnLast);
        Assert.Equal(["Routine visit by TNU", "set point: 1350\u00a0µS/cm → 1395\u00a0µS/cm", "Water loss: said in English"], stop.Since.Select(entry => entry.Words.In(Language.English)));
        Assert.EndsWith(": dicho en español", stop.Since[^1].Words.In(Language.Spanish), StringComparison.Ordinal);
    }

    [Fact]
    public async Task OfAsync_ResultCameInAfterTheVisit_IsTold()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var site = await firm.AddSiteAsync("YAF-1");
        var first = ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1350);
        var amended = first with
        {
            Version = 2,
            Amends = 1,
            AmendedBy = "IWE",
            AmendedAt = Moment.OfUtc(ReadingFirm.Start.AddDays(10)),
            Reason = "laboratory result",
            Systems =
            [
                first.Systems[0] with
                {
                    Readings = [.. first.Systems[0].Readings, new Reading { At = "tower", Test = "legionella", Source = ReadingSource.Lab, Value = 300, Unit = "[CFU]/mL", ResultAt = Moment.OfUtc(ReadingFirm.Start.AddDays(10)) }],
                },
            ],
        };
        await firm.AddVisitAsync(site, amended, false, first);

        var round = await Query(firm).OfAsync(ReadingFirm.Technician);

        Assert.Equal(["Legionella: 300\u00a0CFU/mL", "Visit amended by IWE: laboratory result"], Assert.Single(round!.Stops).Since.Select(entry => entry.Words.In(Language.English)));
    }

    [Fact]
    public async Task OfAsync_OtherPersonsSites_AreNotOnTheRound()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddSiteAsync("YAF-1");
        await firm.AddSiteAsync("SNE-1", assignedTo: "PUM");

        Assert.Equal(["YAF-1"], (await Query(firm).OfAsync(ReadingFirm.Technician))!.Stops.Select(stop => stop.Site.Code));
        Assert.Equal(2, (await Query(firm).OfAsync(ReadingFirm.Supervisor))!.Stops.Count);
    }

    [Fact]
    public async Task OfAsync_DrumRunsOutBeforeTheVisitIsDue_StandsFirstWithItsReason()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var today = firm.Clock.GetUtcNow().UtcDateTime;
        var soon = await firm.AddSiteAsync("NUR-1", everyDays: 7);
        var drum = await firm.AddSiteAsync("YAF-1", everyDays: 28);
        await firm.AddVisitAsync(soon, ReadingFirm.VisitOf("NUR-1", today.AddDays(-4), 1350));
        await firm.AddVisitAsync(drum, ReadingFirm.VisitOf("YAF-1", today.AddDays(-4), 1350));
        var day = DateOnly.FromDateTime(today);
        await firm.SetAheadAsync(drum, new SystemAhead { Drums = [new DrumAhead("D-INH", "P-40", day.AddDays(-4), 5, 1) { From = day.AddDays(1), To = day.AddDays(4) }] });
        await firm.AddFindingAsync(soon, FindingKinds.WaterLoss, Severity.Plan, day.AddDays(-9));

        var stops = (await Query(firm).OfAsync(ReadingFirm.Technician))!.Stops;

        Assert.Equal([("YAF-1", 1), ("NUR-1", 3)], stops.Select(stop => (stop.Site.Code, stop.Site.UrgentInDays!.Value)));
        Assert.StartsWith("drum of P-40 (D-INH) runs out about ", stops[0].Site.Reasons[0].Words.In(Language.English), StringComparison.Ordinal);
        Assert.Equal(24, stops[0].Site.DueInDays);
    }

    [Fact]
    public async Task OfAsync_ActFindingUnanswered_IsDueSinceItWasSeenUntilSomebodyTakesItOn()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        var today = firm.Clock.GetUtcNow().UtcDateTime;
        var day = DateOnly.FromDateTime(today);
        var (open, taken) = (await firm.AddSiteAsync("YAF-1"), await firm.AddSiteAsync("NUR-1"));
        await firm.AddVisitAsync(open, ReadingFirm.VisitOf("YAF-1", today.AddDays(-2), 1350));
        await firm.AddVisitAsync(taken, ReadingFirm.VisitOf("NUR-1", today.AddDays(-2), 1350));
        await firm.AddFindingAsync(open, FindingKinds.MicrobiologyHigh, Severity.Act, day.AddDays(-1));
        await firm.AddFindingAsync(taken, FindingKinds.MicrobiologyHigh, Severity.Act, day.AddDays(-1), state: FindingState.Acknowledged);

        var stops = (await Query(firm).OfAsync(ReadingFirm.Technician))!.Stops;

        Assert.Equal([("YAF-1", -1), ("NUR-1", 5)], stops.Select(stop => (stop.Site.Code, stop.Site.UrgentInDays!.Value)));
        Assert.Equal(new SeverityCounts(1, 0, 0), stops[1].Site.Open);
    }

    [Fact]
    [Trait("goal", "P2")]
    public async Task OfAsync_TenTimesTheSites_SendsTheSameFewStatements()
    {
        await using var firm = await ReadingFirm.CreateAsync();
        await firm.AddVisitAsync(await firm.AddSiteAsync("AAA-0"), ReadingFirm.VisitOf("AAA-0", ReadingFirm.Start, 1350));
        var few = await firm.CountAsync(() => Query(firm).OfAsync(ReadingFirm.Technician));
        for (var i = 1; i < 10; i++)
        {
            await firm.AddVisitAsync(await firm.AddSiteAsync($"AAA-{i}"), ReadingFirm.VisitOf($"AAA-{i}", ReadingFirm.Start, 1350));
        }

        var many = await firm.CountAsync(() => Query(firm).OfAsync(ReadingFirm.Technician));

        Assert.Equal(few, many);
        Assert.InRange(many, 1, 8);
    }

    private static TodaysRoundQuery Query(ReadingFirm firm) => new(firm.Store, new SitesQuery(firm.Store, firm.Clock), firm.Clock);
}
