using System.Collections.Concurrent;
using LogBook.Application.Data;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
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
        await Expect(tablet.Page.Locator("#pin")).ToBeVisibleAsync();
        await tablet.GoHomeAsync();
        await tablet.PictureAsync("locked");
        var locked = await WriteAsync(tablet, "Without a PIN: sealed drafts only");
        await Expect(tablet.Page.Locator("#notices")).ToContainTextAsync("because no PIN was given: closed visits 1, photos 1");
        var lockedText = await File.ReadAllTextAsync(locked);
        Assert.DoesNotContain("noise in the fan", lockedText, StringComparison.Ordinal);
        Assert.Contains("\"visits\":[]", lockedText, StringComparison.Ordinal);
        Assert.Contains("\"photos\":[]", lockedText, StringComparison.Ordinal);

        await using var desk = await TestBrowser.StartAsync("rescue-desk");
        var page = await desk.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Supervisor);
        await page.GoAsync("/rescue");
        await page.Locator("#rescue-file").SetInputFilesAsync(locked);
        await Expect(page.Locator("#rescue-content")).ToContainTextAsync("still on the tablet: closed visits 1, photos 1");
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

    [Fact]
    public async Task Rescue_ThatNeedsSeveralFiles_IsTakenInWhole_AndNamesWhatIsMissing()
    {
        // Three photos of more than 30,000 characters each: there is room for one of them in a file.
        const int Most = 60_000;
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "rescue-files");
        await tablet.RegisterAsync();
        Guid[] photos = [.. Enumerable.Range(1, 3).Select(number => Guid.Parse($"0198b000-0000-7000-8000-0000000000f{number}"))];
        var hashes = await tablet.AskAsync<string[]>("photos.js", """
            async (photos, ids) => {
              const hashes = [];
              for (const [at, id] of ids.entries()) {
                // Noise is what a JPEG cannot make small.
                const canvas = new OffscreenCanvas(240, 200);
                const pen = canvas.getContext("2d");
                const picture = pen.createImageData(240, 200);
                crypto.getRandomValues(picture.data.subarray(0, 60_000));
                crypto.getRandomValues(picture.data.subarray(60_000, 120_000));
                crypto.getRandomValues(picture.data.subarray(120_000, 180_000));
                for (let i = 3; i < picture.data.length; i += 4) picture.data[i] = 255;
                pen.putImageData(picture, 0, 0);
                hashes.push(await photos.keep(id, "0198b000-0000-7000-8000-0000000000e" + (at + 1), new Uint8Array(await (await canvas.convertToBlob({ type: "image/png" })).arrayBuffer())));
              }
              return hashes;
            }
            """, photos);
        var visits = photos.Select((photo, at) => VisitDocument.WithIds(SampleFirm.Visit("YAF-1", $"2025-03-2{at + 5}T07:00:00+00:00") with
        {
            Id = Guid.Parse($"0198b000-0000-7000-8000-0000000000e{at + 1}"),
            Photos = [new Photo { Id = photo, Of = "CT-1/observations/tower", Sha256 = hashes[at] }],
        })).ToList();
        await tablet.AskAsync<object?>("queue.js", """
            async (queue, visits) => {
              window.fetch = () => Promise.reject(new TypeError("no signal"));
              for (const [id, site, document, photo] of visits) await queue.enqueue({ id, version: 1, site, siteName: "Yaffleford College", person: "RYA", document, photos: [photo] });
            }
            """, visits.Select((visit, at) => new[] { visit.Id.ToString("D"), visit.Site, VisitDocument.Canonical(visit), photos[at].ToString("D") }).ToArray());

        var downloads = new ConcurrentQueue<IDownload>();
        var all = new TaskCompletionSource(TaskCreationOptions.RunContinuationsAsynchronously);
        tablet.Page.Download += (_, download) =>
        {
            downloads.Enqueue(download);
            if (downloads.Count == 3)
            {
                all.TrySetResult();
            }
        };
        Assert.Equal(3, await tablet.AskAsync<int>("rescue.js", "async (rescue, most) => (await rescue.rescueFile(0, most)).files", Most));
        await all.Task.WaitAsync(TimeSpan.FromMinutes(1));
        var files = new List<string>();
        foreach (var download in downloads.OrderBy(download => download.SuggestedFilename, StringComparer.Ordinal))
        {
            Assert.EndsWith($"-{files.Count + 1}.json", download.SuggestedFilename, StringComparison.Ordinal);
            files.Add((await download.PathAsync())!);
        }

        await using var desk = await TestBrowser.StartAsync("rescue-files-desk");
        var page = await desk.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Supervisor);
        await page.GoAsync("/rescue");
        var parts = page.Locator("#rescue-parts");
        await TakeInAsync(page, files[0], RescueTexts.PartOf.In(Language.English, 1, 3, "1, 2, 3"));
        await Expect(parts).ToHaveTextAsync(RescueTexts.PartOf.In(Language.English, 1, 3, "2, 3"));
        await TakeInAsync(page, files[2], RescueTexts.PartOf.In(Language.English, 3, 3, "2, 3"));
        await Expect(parts).ToHaveTextAsync(RescueTexts.PartOf.In(Language.English, 3, 3, "2"));
        await desk.PictureAsync(page, "missing");
        await TakeInAsync(page, files[1], RescueTexts.PartOf.In(Language.English, 2, 3, "2"));
        await Expect(parts).ToHaveTextAsync(RescueTexts.AllParts.In(Language.English, 3));

        var stored = await host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(Viewer.System("test"), db => db.Photos.Where(row => photos.Contains(row.PhotoId)).ToListAsync());
        Assert.Equal(3, stored.Count);
        Assert.All(stored, photo => Assert.NotNull(photo.StoredAt));
    }

    // The page takes no other file while it is still busy with one.
    private static async Task TakeInAsync(IPage page, string file, string says)
    {
        await Expect(page.Locator("#rescue-file")).ToBeEnabledAsync();
        await page.Locator("#rescue-file").SetInputFilesAsync(file);
        await Expect(page.Locator("#rescue-parts")).ToHaveTextAsync(says);
        await page.Locator("#rescue-take").ClickAsync();
    }

    private static async Task<string> WriteAsync(Tablet tablet, string button)
    {
        var download = await tablet.Page.RunAndWaitForDownloadAsync(() => tablet.Page.GetByRole(AriaRole.Button, new() { Name = button, Exact = true }).ClickAsync());
        Assert.StartsWith("logbook-rescue-", download.SuggestedFilename, StringComparison.Ordinal);
        return (await download.PathAsync())!;
    }
}
