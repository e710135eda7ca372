using Bunit;
using LogBook.Application.Audit;
using LogBook.Application.Data;
using LogBook.Domain.Exchange;
using LogBook.Domain.Findings;
using LogBook.Domain.Languages;
using LogBook.Domain.Programmes;
using LogBook.Domain.Sites;
using LogBook.Domain.Visits;
using LogBook.Testing.Readers;
using LogBook.Web.Features.Settings;
using LogBook.Web.Features.Sites;
using Microsoft.EntityFrameworkCore;

namespace LogBook.Web.Tests.Readers;

public sealed class SettingsPagesTests
{
    [Fact]
    public async Task Settings_ChangedWhileAway_StandsFirst()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ResetAsync);

        var page = pages.Render<SettingsPage>("/sites/YAF-1/systems/CT-1/settings?on=2025-04-01", ("Code", "YAF-1"), ("System", "CT-1"));

        var away = page.Find("#changed-away").TextContent;
        Assert.Contains("Set point: left at 1350\u00a0µS/cm; found: 1000\u00a0µS/cm", away, StringComparison.Ordinal);
        Assert.Equal("/sites/YAF-1/systems/CT-1/re-entry?on=2025-03-16", page.Find("#changed-away a[href*='re-entry']").GetAttribute("href"));
    }

    [Fact]
    public async Task ReEntry_DayBefore_HasTheOldValueAndTellsWhatCameLater()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: ResetAsync);

        // No day in the address: the day before the settings were lost.
        var page = pages.Render<ReEntryPage>("/sites/YAF-1/systems/CT-1/re-entry", ("Code", "YAF-1"), ("System", "CT-1"));

        var row = page.FindAll("tbody tr").Single(tr => tr.QuerySelector("th")!.TextContent == "Set point");
        Assert.Contains("1350\u00a0µS/cm", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("as left on", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("asks 1400", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("enters nothing", page.Markup, StringComparison.Ordinal);
        Assert.Equal(3, page.FindAll(".signature-line > div").Count);
    }

    [Fact]
    public async Task ReEntry_ManyChangesOfOtherSystems_DoNotUseUpItsOwn()
    {
        // More changes of another site's system than are read at most, and then one of this: its pump is another.
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var customer = await ResetAsync(firm);
            var pump = new Pump { Code = "P-INH", Drum = "D-INH", Output = "inhibitor", RatedLPerH = 1.5 };
            WaterSystem Of(string site, double rated) => new() { Site = site, Code = "CT-1", Name = "Cooling tower 1", Kind = SystemKind.OpenRecirculating, Pumps = [pump with { RatedLPerH = rated }] };
            await firm.Store.WriteAsync(Viewer.System("test"), async db =>
            {
                for (var i = 0; i < 405; i++)
                {
                    Change(db, Of("NUR-1", i + 1), Of("NUR-1", i + 2));
                }

                Change(db, Of("YAF-1", 1.5), Of("YAF-1", 3));
                var system = await db.Systems.AsTracking().SingleAsync();
                system.Document = ExchangeWriter.CanonicalOf(ExchangeReader.Parse<WaterSystem>(system.Document) with
                {
                    Pumps = [pump with { RatedLPerH = 3 }],
                    Drums = [new Drum { Code = "D-INH", Product = "P-40", Shape = DrumShape.VerticalCylinder, CapacityL = 60, HeightCm = 62 }],
                    Programmes = [new Programme { From = new DateOnly(2025, 1, 6), SetPointUsPerCm = 1350, Feeds = [new Feed { Drum = "D-INH", Output = "inhibitor", Mode = FeedMode.ByMakeUpVolume, EveryL = 1000, RunSeconds = 40 }] }],
                });
            });
            return customer;
        });

        var page = pages.Render<ReEntryPage>("/sites/YAF-1/systems/CT-1/re-entry?on=2025-03-16", ("Code", "YAF-1"), ("System", "CT-1"));

        Assert.Contains("pump P-INH: 3 L/h on file instead of 1.5", page.Markup.Replace('\u00a0', ' '), StringComparison.Ordinal);

        static void Change(LogBookDb db, WaterSystem before, WaterSystem after) =>
            db.Audit(new AuditEntry(AuditActs.Changed, "System", $"{before.Site}/{before.Code}", null, ExchangeWriter.CanonicalOf(before), ExchangeWriter.CanonicalOf(after)));
    }

    [Fact]
    public async Task ReEntry_ReadBackTyped_TellsWhatDiffersAndNamesBadInput()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ResetAsync);
        var page = pages.Render<ReEntryPage>("/sites/YAF-1/systems/CT-1/re-entry?on=2025-03-16", ("Code", "YAF-1"), ("System", "CT-1"));

        page.Find("#back-setPointUsPerCm").Change("1350");
        page.Find("#back-highAlarmUsPerCm").Change("l620");
        page.Find("#sheet").Submit();

        Assert.Contains("1 as on the sheet, 0 differ", page.Find("#read-back-says").TextContent, StringComparison.Ordinal);
        Assert.Contains("High alarm: “l620” is not a number; expected is one like 1620", page.Find("#read-back-problems").TextContent, StringComparison.Ordinal);

        page.Find("#back-setPointUsPerCm").Change("1000");
        page.Find("#back-highAlarmUsPerCm").Change("1620");
        page.Find("#sheet").Submit();

        Assert.Empty(page.FindAll("#read-back-problems"));
        Assert.Contains("1 as on the sheet, 1 differ", page.Find("#read-back-says").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ReEntry_OpenFindings_StandBesideTheirGroupOrOnTop()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Supervisor, fill: async firm =>
        {
            var customer = await ResetAsync(firm);
            var at = await firm.SystemAsync("YAF-1");
            await firm.Store.WriteAsync(Viewer.System("test"), async db =>
            {
                var row = await db.Systems.AsTracking().SingleAsync(one => one.Id == at.System);
                row.Document = ExchangeWriter.CanonicalOf(Documents.System(row.Document) with { Outputs = [new Output { Code = "bleed", Drives = OutputDrives.Bleed }] });
            });
            await firm.AddFindingAsync(at, FindingKinds.BleedNotClosing, Severity.Watch, new DateOnly(2025, 3, 20), about: new About { Output = "bleed" });
            await firm.AddFindingAsync(at, FindingKinds.MakeUpChanged, Severity.Watch, new DateOnly(2025, 3, 20));
            for (var day = 1; day <= 9; day++)
            {
                await firm.AddFindingAsync(at, FindingKinds.RangeOut, Severity.Plan, new DateOnly(2025, 3, day), about: new About { Test = $"test-{day}" });
            }

            return customer;
        });

        var page = pages.Render<ReEntryPage>("/sites/YAF-1/systems/CT-1/re-entry?on=2025-03-16", ("Code", "YAF-1"), ("System", "CT-1"));

        // Beside the bleed even what is only to be watched; on top all that is about no line, with what is to be watched folded.
        var bleed = page.FindAll(".re-entry section")[0];
        Assert.Contains(FindingTexts.NameOf(FindingKinds.BleedNotClosing).En, bleed.QuerySelector(".findings")!.TextContent, StringComparison.Ordinal);
        var top = page.Find("section[aria-labelledby='findings']");
        Assert.DoesNotContain(FindingTexts.NameOf(FindingKinds.BleedNotClosing).En, top.TextContent, StringComparison.Ordinal);
        Assert.True(top.QuerySelectorAll("li").Count(line => line.TextContent.Contains(FindingTexts.NameOf(FindingKinds.RangeOut).En, StringComparison.Ordinal)) == 9);
        Assert.Contains(FindingTexts.NameOf(FindingKinds.MakeUpChanged).En, page.Find("#watched").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ReEntry_Spanish_IsInSpanish()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, Language.Spanish, ResetAsync);

        var page = pages.Render<ReEntryPage>("/sites/YAF-1/systems/CT-1/re-entry?on=2025-03-16", ("Code", "YAF-1"), ("System", "CT-1"));

        Assert.StartsWith("Hoja de reingreso", page.Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Contains(page.FindAll("th"), th => th.TextContent == "Punto de consigna");
    }

    [Theory]
    [InlineData(PersonRole.Customer)]
    [InlineData(PersonRole.SiteStaff)]
    [Trait("goal", "S1")]
    public async Task Pages_CustomersAccount_SeesNothing(PersonRole role)
    {
        await using var pages = await ReadPages.ForAsync(role, fill: ResetAsync);

        Assert.Equal("Nothing here", pages.Render<SettingsPage>("/sites/YAF-1/systems/CT-1/settings", ("Code", "YAF-1"), ("System", "CT-1")).Find("h1").TextContent);
        Assert.Equal("Nothing here", pages.Render<ReEntryPage>("/sites/YAF-1/systems/CT-1/re-entry", ("Code", "YAF-1"), ("System", "CT-1")).Find("h1").TextContent);
        Assert.DoesNotContain("/settings", pages.Render<SiteCardPage>("/sites/YAF-1", ("Code", "YAF-1")).Markup, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SiteCard_OfTheFirm_LinksToSettings()
    {
        await using var pages = await ReadPages.ForAsync(PersonRole.Technician, fill: ResetAsync);

        Assert.Contains("/sites/YAF-1/systems/CT-1/settings", pages.Render<SiteCardPage>("/sites/YAF-1", ("Code", "YAF-1")).Markup, StringComparison.Ordinal);
    }

    private static async Task<int?> ResetAsync(ReadingFirm firm)
    {
        var site = await firm.AddSiteAsync("YAF-1");
        await firm.AddVisitAsync(site, With(ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start, 1340), ("setPointUsPerCm", 1350, 1350), ("highAlarmUsPerCm", 1620, 1620)));
        await firm.AddVisitAsync(site, With(ReadingFirm.VisitOf("YAF-1", ReadingFirm.Start.AddDays(14), 1000), ("setPointUsPerCm", 1000, 1350), ("highAlarmUsPerCm", 3000, 1620)));
        await firm.AddFindingAsync(site, FindingKinds.SettingsLost, Severity.Act, DateOnly.FromDateTime(ReadingFirm.Start.AddDays(14)));
        return site.Customer;
    }

    private static Visit With(Visit visit, params (string Name, double Found, double Left)[] settings) => visit with
    {
        Systems = [visit.Systems[0] with { Settings = [.. settings.Select(s => new SettingReading { Name = s.Name, Found = SettingValue.Of(s.Found), Left = SettingValue.Of(s.Left), Unit = "uS/cm", Step = 1 })] }],
    };
}
