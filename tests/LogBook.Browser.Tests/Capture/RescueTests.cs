using LogBook.Application.Data;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Visits;
using LogBook.Entry.Texts;
using LogBook.Testing;
using LogBook.Web.Features.Rescue;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A tablet that cannot send any more, of a person who has left: what lies on it comes to the server by its rescue file.</summary>
public sealed class RescueTests
{
    private const string Notes = "visit/notes";

    [Fact]
    public async Task Rescue_VisitDraftAndPhoto_ReachTheServer_SealedWithoutThePin_ReadableWithIt()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "rescue");
        await tablet.RegisterAsync();
        await tablet.UntilAsync("async () => (await (await import('/capture/people.js')).person('RYA')).seconds?.some((one) => one.held)");
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await tablet.Page.EnterAsync(Notes, "noise in the fan");
        await tablet.GoHomeAsync();
        var visit = VisitDocument.WithIds(SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00"));
        await tablet.AskAsync<object?>("queue.js", """
            async (queue, [id, site, document]) => {
              const store = await import("/capture/store.js");
              const photos = await import("/capture/photos.js");
              const [draft] = await store.all("drafts");
              const canvas = new OffscreenCanvas(40, 30);
              canvas.getContext("2d").fillRect(0, 0, 20, 20);
              await photos.keep("0198b000-0000-7000-8000-0000000000f1", draft.id, new Uint8Array(await (await canvas.convertToBlob({ type: "image/png" })).arrayBuffer()));
              window.fetch = () => Promise.reject(new TypeError("no signal"));
              await queue.enqueue({ id, version: 1, site, siteName: "Yaffleford College", person: "RYA", document, photos: [] });
            }
            """, new object[] { visit.Id.ToString("D"), visit.Site, VisitDocument.Canonical(visit) });

        var readable = await WriteAsync(tablet, "Rescue file");
        await Expect(tablet.Page.Locator("#notices")).ToContainTextAsync("visits 1, drafts 1, photos 1");
        await tablet.Page.GotoAsync("/capture/#/who");
        await tablet.GoHomeAsync();
        await tablet.PictureAsync("locked");
        var locked = await WriteAsync(tablet, "Without a PIN: sealed drafts only");
        var lockedText = await File.ReadAllTextAsync(locked);
        Assert.DoesNotContain("noise in the fan", lockedText, StringComparison.Ordinal);
        Assert.Contains("\"visits\":[]", lockedText, StringComparison.Ordinal);
        Assert.Contains("\"photos\":[]", lockedText, StringComparison.Ordinal);

        await using var desk = await TestBrowser.StartAsync("rescue-desk");
        var page = await desk.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Supervisor);
        await page.GoAsync("/rescue");
        await page.Locator("#rescue-file").SetInputFilesAsync(locked);
        await Expect(page.Locator("#rescue-content")).ToContainTextAsync("Closed visits that stay on the tablet: 1");
        await Expect(page.Locator("#rescue-drafts")).ToContainTextAsync(JobHost.Technician);
        await page.Locator("#rescue-drafts input").FillAsync("has left, nobody knows the PIN");
        await desk.PictureAsync(page, "sealed");
        await page.GetByRole(AriaRole.Button, new() { Name = RescueTexts.OpenSealed.En }).ClickAsync();
        await Expect(page.Locator("#rescue-drafts")).ToContainTextAsync(RescueTexts.DraftTaken.En);
        await Expect(page.Locator("#rescue-pending")).ToContainTextAsync("entered by RYA");

        await page.Locator("#rescue-file").SetInputFilesAsync(readable);
        await Expect(page.Locator("#rescue-holds")).ToContainTextAsync("Visits: 1, drafts: 1, photos: 1");
        await page.Locator("#rescue-take").ClickAsync();
        await Expect(page.Locator("#rescue-visits")).ToContainTextAsync(RescueTexts.VisitTaken.En);
        await Expect(page.Locator("#rescue-drafts")).ToContainTextAsync(RescueTexts.DraftBefore.En);
        await desk.PictureAsync(page, "taken");
        Assert.Equal(1, await host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(Viewer.System("test"), db => db.Visits.CountAsync(row => row.VisitId == visit.Id)));

        await page.Locator("#rescue-pending a").ClickAsync();
        await Expect(page.Locator("#rescued-from")).ToContainTextAsync("in the name of RYA");
        await page.StepAsync(EntryTexts.Arrive.En);
        await Expect(page.Field(Notes)).ToHaveValueAsync("noise in the fan");
        await desk.PictureAsync(page, "draft");
    }

    private static async Task<string> WriteAsync(Tablet tablet, string button)
    {
        var download = await tablet.Page.RunAndWaitForDownloadAsync(() => tablet.Page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync());
        Assert.StartsWith("logbook-rescue-", download.SuggestedFilename, StringComparison.Ordinal);
        return (await download.PathAsync())!;
    }
}
