using System.Buffers.Binary;
using System.Collections.Concurrent;
using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using LogBook.Application.Visits;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Exchange;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Entry.Plans;
using LogBook.Entry.Texts;
using LogBook.Testing;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The form in the tablet's own runtime: axe in Spanish and Portuguese, dark and in gloves, and a photo without its place.</summary>
public sealed class OnDeviceFormTests
{
    [Fact]
    [Trait("goal", "U3")]
    public async Task Form_SpanishAndPortuguese_AxeFindsNothing()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "on-device", locale: null);
        await tablet.RegisterAsync();
        var found = new List<string>();
        foreach (var (locale, language, name) in new[] { ("es-MX", Language.Spanish, "Español"), ("pt-BR", Language.Portuguese, "Português") })
        {
            await tablet.SetLocaleAsync(locale);
            await tablet.GoHomeAsync();
            await tablet.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).ClickAsync();
            await tablet.OpenVisitAsync(JobHost.Site, "Abrir");
            Assert.Equal(locale, await tablet.Page.EvaluateAsync<string>("() => new Intl.NumberFormat().resolvedOptions().locale"));

            // A doubt, a question and a text that is no number have their looks too.
            await tablet.Page.StepAsync(EntryTexts.Stock.In(language));
            await tablet.Page.EnterAllAsync([(TypedVisit.Of("meters", "MU", "dial"), "9990075,5"), (TypedVisit.Of("drums", "D-INH", "level"), "1.234"), (TypedVisit.Of("drums", "D-INH", "addedL"), "12O")]);
            await LooksAsync(tablet, language, found);
        }

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    [Fact]
    [Trait("goal", "U1")]
    public async Task AllSettingsNow_AfterTheStepIsThere_BringsEveryOne()
    {
        await using var host = await JobHost.StartAsync();
        using var setUp = new StreamReader(SampleFirm.SetUp());
        var system = ExchangeReader.Read(await setUp.ReadToEndAsync()).Document!.Systems.Single(one => one.Site == JobHost.Site);
        var settings = SettingList.Of(system.Programmes.MaxBy(programme => programme.From)!, system);
        var rare = settings.Count(setting => !setting.EachVisit);
        Assert.NotEqual(0, rare);

        // All were read lately, so that the walk is not due.
        var walked = SampleFirm.Visit(JobHost.Site, "2025-03-24T09:05:00+00:00");
        walked = walked with
        {
            Systems = [walked.Systems[0] with { Settings = [.. settings.Select(one => new SettingReading { Name = one.Name, Found = one.Programme is double number ? SettingValue.Of(number) : SettingValue.Of((string)one.Programme) })] }],
        };
        Assert.IsType<IntakeOutcome.Stored>(await host.App.Services.GetRequiredService<VisitIntake>().ReceiveAsync(host.TechnicianViewer, walked, IntakeSource.Page));
        await using var tablet = await Tablet.StartAsync(host.Address, "all-settings");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Controller.En);
        var walk = tablet.Page.Locator("details.lb-more", new() { HasText = StepTexts.SettingsWalkNow.En });
        await Expect(walk).ToBeVisibleAsync();
        await Expect(walk.Locator(".lb-field")).ToHaveCountAsync(0);

        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = StepTexts.AllSettingsNow.En }).ClickAsync();

        await Expect(walk.Locator(".lb-field")).ToHaveCountAsync(rare);
    }

    [Fact]
    [Trait("goal", "S2")]
    public async Task Photo_WithALocationInIt_IsSentWithoutIt()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "photo-place");
        await tablet.RegisterAsync();
        var plain = Convert.FromBase64String(await tablet.Page.EvaluateAsync<string>("""
            async () => {
              const canvas = new OffscreenCanvas(64, 48);
              canvas.getContext("2d").fillRect(0, 0, 32, 48);
              const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: "image/jpeg" })).arrayBuffer());
              return btoa(String.fromCharCode(...bytes));
            }
            """));
        var placed = WithPlace(plain);
        Assert.True(Holds(placed, "Exif"u8) && Holds(placed, "2025:03:31"u8));
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Controller.En);
        await tablet.Page.Locator(".lb-form input[type=file]").First.SetInputFilesAsync(new FilePayload { Name = "dial.jpg", MimeType = "image/jpeg", Buffer = placed });
        await Expect(tablet.Page.Locator(".lb-thumb")).ToBeVisibleAsync();

        // What the queue sends of it, as it goes over the line.
        var visit = VisitDocument.WithIds(SampleFirm.Visit("YAF-1", "2025-03-31T07:00:00+01:00"));
        var kept = await tablet.AskAsync<string[]>("store.js", """
            async (store) => {
              const keys = await import("/capture/keys.js");
              const [photo] = await store.all("photos");
              return [photo.id, await keys.sha256(await keys.openBytesForDevice(photo.sealed))];
            }
            """);
        visit = visit with { Photos = [new Photo { Id = Guid.Parse(kept[0]), Of = "display", Sha256 = kept[1] }] };
        var requests = new ConcurrentQueue<IRequest>();
        tablet.Page.Request += (_, request) => requests.Enqueue(request);
        await tablet.AskAsync<object?>(
            "queue.js",
            """
            async (queue, [id, document, photo]) => {
              await queue.enqueue({ id, version: 1, site: "YAF-1", siteName: "Yaffleford College", person: "RYA", document, photos: [photo] });
              await queue.send();
            }
            """,
            new object[] { visit.Id.ToString("D"), VisitDocument.Canonical(visit), kept[0] });
        await Expect(tablet.Page.Locator("#standing")).ToHaveTextAsync("All is sent");

        var sent = Assert.Single(requests, one => one.Method == "POST" && one.Url.EndsWith("/api/v1/photos/" + kept[0], StringComparison.Ordinal)).PostDataBuffer!;
        Assert.Equal([0xFF, 0xD8], sent[..2]);
        Assert.False(Holds(sent, "Exif"u8) || Holds(sent, "2025:03:31"u8) || Holds(sent, "GPS"u8));
        Assert.NotNull(await host.App.Services.GetRequiredService<PhotoStore>().FindAsync(host.TechnicianViewer, Guid.Parse(kept[0]), small: false));
    }

    // As it comes, then dark and in gloves.
    private static async Task LooksAsync(Tablet tablet, Language language, List<string> found)
    {
        Text[] steps =
        [
            EntryTexts.Arrive, EntryTexts.Controller, EntryTexts.Reference, EntryTexts.Water, EntryTexts.Stock, EntryTexts.Tower, EntryTexts.Samples, EntryTexts.Adjust, EntryTexts.Close,
        ];
        foreach (var isDark in new[] { false, true })
        {
            await tablet.Page.EvaluateAsync("(looks) => localStorage.setItem('logbook.entry.looks', looks)", isDark ? "gloves dark" : "light");
            await tablet.GoHomeAsync();
            await tablet.OpenVisitAsync(JobHost.Site);
            await Expect(tablet.Page.Locator(".lb-form[data-gloves=on][data-scheme=dark]")).ToHaveCountAsync(isDark ? 1 : 0);
            foreach (var step in steps)
            {
                await tablet.Page.StepAsync(step.In(language));
                var result = await tablet.Page.RunAxe(new AxeRunOptions());
                Assert.NotEmpty(result.Passes);
                found.AddRange(result.Violations.Concat(result.Incomplete).SelectMany(rule => rule.Nodes.Select(node => $"{step.In(language)}, dark {isDark}: {rule.Id} at {node.Target} {node.Html}")));
                await tablet.PictureAsync($"{step.In(language)}-{(isDark ? "dark" : "light")}");
            }
        }

        await tablet.Page.EvaluateAsync("() => localStorage.removeItem('logbook.entry.looks')");
    }

    private static bool Holds(byte[] content, ReadOnlySpan<byte> part) => content.AsSpan().IndexOf(part) >= 0;

    // An Exif segment behind the first marker: one directory that names that of the place, with a latitude and a day (Exif 2.32, 4.6.6).
    private static byte[] WithPlace(byte[] jpeg)
    {
        var tiff = new byte[90];
        "II*\0"u8.CopyTo(tiff);
        BinaryPrimitives.WriteUInt32LittleEndian(tiff.AsSpan(4), 8);
        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(8), 1);
        Entry(10, 0x8825, 4, 1, 26);
        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(26), 2);
        Entry(28, 0x0002, 5, 3, 56);
        Entry(40, 0x001D, 2, 11, 79);
        foreach (var (at, value) in new[] { (56, 51u), (60, 1u), (64, 30u), (68, 1u), (72, 5u) })
        {
            BinaryPrimitives.WriteUInt32LittleEndian(tiff.AsSpan(at), value);
        }

        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(76), 1);
        "2025:03:31"u8.CopyTo(tiff.AsSpan(79));
        byte[] body = [.. "Exif\0\0"u8, .. tiff];
        return [0xFF, 0xD8, 0xFF, 0xE1, (byte)((body.Length + 2) >> 8), (byte)(body.Length + 2), .. body, .. jpeg[2..]];

        void Entry(int at, ushort tag, ushort type, uint count, uint value)
        {
            BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(at), tag);
            BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(at + 2), type);
            BinaryPrimitives.WriteUInt32LittleEndian(tiff.AsSpan(at + 4), count);
            BinaryPrimitives.WriteUInt32LittleEndian(tiff.AsSpan(at + 8), value);
        }
    }
}
