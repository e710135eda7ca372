using System.Globalization;
using System.Text.RegularExpressions;
using LogBook.Application.Data;
using LogBook.Application.Reviews;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Assessments;
using LogBook.Domain.Findings;
using LogBook.Domain.Visits;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The same keys make the same document and find the same: entered without signal on a tablet of one installation, and on the server's page of another.</summary>
public sealed partial class SameFindingsTests
{
    private const string Arrived = "2025-03-31T09:20";

    [Fact]
    public async Task Visit_EnteredOffline_AndTheSameKeysOnTheServersPage_MakeTheSameDocumentAndFindTheSame()
    {
        var (sent, offline) = await OnTabletAsync();
        var (typed, online) = await OnServerAsync();

        Assert.Equal(typed, sent);
        Assert.Contains("103.5", sent, StringComparison.Ordinal);
        Assert.Contains(offline, line => line.Contains(FindingKinds.RangeOut, StringComparison.Ordinal));
        Assert.Contains(offline, line => line.Contains(FigureCodes.CyclesByChloride, StringComparison.Ordinal));
        Assert.Equal(online, offline);
    }

    private static async Task<(string Document, IReadOnlyList<string> Findings)> OnTabletAsync()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "same-findings-tablet");
        await tablet.RegisterAsync();
        link.Cut();
        await tablet.OpenVisitAsync(JobHost.Site);
        await ArriveAsync(tablet.Page);
        await TypedVisit.FillAsync(tablet.Page, tablet.PictureAsync);
        var draft = (await tablet.AskAsync<string[]>("desk.js", "async (desk) => (await desk.drafts()).map((row) => row.id)")).Single();
        await TypedVisit.CloseAsync(tablet.Page, tablet.PictureAsync);
        await Expect(tablet.Page.Locator("#form")).ToBeHiddenAsync();
        link.Mend();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Send now" }).ClickAsync();
        await Expect(tablet.Page.Locator(".mark.server, .mark.mailed")).ToHaveCountAsync(1);
        return (await DocumentAsync(host, draft), await FindingsAsync(host, draft));
    }

    private static async Task<(string Document, IReadOnlyList<string> Findings)> OnServerAsync()
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("same-findings-server");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Technician);
        await page.GoAsync("/visit/" + JobHost.Site);
        await ArriveAsync(page);
        await TypedVisit.FillAsync(page, name => browser.PictureAsync(page, name));
        await TypedVisit.CloseAsync(page, name => browser.PictureAsync(page, name));
        await page.WaitForURLAsync("**/visits/*");
        return (await DocumentAsync(host, page.Url[^36..]), await FindingsAsync(host, page.Url[^36..]));
    }

    // Both arrive at the same minute; all else is typed.
    private static async Task ArriveAsync(IPage page)
    {
        var box = page.Field("visit/arrived");
        await box.FillAsync(Arrived);
        await box.BlurAsync();
        await Expect(box).ToHaveValueAsync(Arrived);
    }

    // Byte for byte, but for what no two visits share: identities, and the moments that the clock gives while one types.
    private static async Task<string> DocumentAsync(JobHost host, string visit)
    {
        var stored = await host.App.Services.GetRequiredService<VisitReader>().FindAsync(Viewer.System("test"), Guid.Parse(visit));
        return Clock().Replace(Identity().Replace(VisitDocument.Canonical(stored!.Visit), "identity"), "moment");
    }

    [GeneratedRegex("[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}")]
    private static partial Regex Identity();

    [GeneratedRegex("(?<!\"arrived\":\")[0-9]{4}-[0-9]{2}-[0-9]{2}T[0-9:.]+(Z|[+-][0-9]{2}:[0-9]{2})")]
    private static partial Regex Clock();

    // Everything that findings and figures say, but for the visit's own identity.
    private static async Task<IReadOnlyList<string>> FindingsAsync(JobHost host, string visit)
    {
        await host.App.Services.GetRequiredService<AssessmentKeeper>().AssessAllAsync(Viewer.System("test"), new DateTime(2025, 3, 31, 12, 0, 0, DateTimeKind.Utc));
        var rows = await host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(Viewer.System("test"), async db => await (
            from finding in db.Findings
            join site in db.Sites on finding.SiteId equals site.Id into sites
            from site in sites.DefaultIfEmpty()
            select new { Site = site == null ? "" : site.Code, finding }).ToListAsync());
        var view = await host.App.Services.GetRequiredService<VisitQuery>().OfAsync(Viewer.System("test"), Guid.Parse(visit));
        return
        [
            .. view!.Figures.Select(figure => string.Create(
                CultureInfo.InvariantCulture,
                $"{figure.System} | {figure.Figure.Code} | {figure.Figure.About} | {figure.Figure.Estimate?.Value:R} ± {figure.Figure.Estimate?.Random:R} {figure.Figure.Estimate?.Unit} | {string.Join(' ', figure.Figure.Why.Select(why => why.En))}")),
            .. rows.Select(row => string.Join(" | ", row.Site, row.finding.Kind, row.finding.AboutKey, row.finding.Severity, row.finding.State, row.finding.FirstSeen, row.finding.LastSeen, row.finding.ClosedOn,
                    row.finding.FirstVisit, row.finding.English, row.finding.Spanish, row.finding.Portuguese).Replace(visit, "this visit", StringComparison.OrdinalIgnoreCase))
                .Order(StringComparer.Ordinal),
        ];
    }
}
