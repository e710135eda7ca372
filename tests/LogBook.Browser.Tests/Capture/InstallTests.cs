using System.Text.Json;
using LogBook.Browser.Tests.Jobs;
using Microsoft.Playwright;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The browser itself says whether the tablet's app can be installed, and its pictures are what the manifest says.</summary>
public sealed class InstallTests
{
    private const int MostBytes = 40_000;

    // What is wrong with the pictures of manifest and page, and the bytes of those that are no drawing.
    private const string LookAtIcons = """
        async () => {
          const manifest = await (await fetch("manifest.webmanifest")).json();
          const apple = document.querySelector("link[rel=apple-touch-icon]");
          const wrong = [];
          let bytes = 0;
          for (const { src, sizes, type } of [...manifest.icons, { src: apple.getAttribute("href"), sizes: "180x180", type: "image/png" }]) {
            const answer = await fetch(src);
            const given = answer.headers.get("content-type");
            if (!answer.ok || given !== type) { wrong.push(`${src}: ${answer.status} ${given}`); continue; }
            const image = Object.assign(new Image(), { src });
            await image.decode().catch(() => wrong.push(`${src} cannot be shown`));
            if (sizes === "any") continue;
            bytes += (await answer.blob()).size;
            if (sizes !== `${image.naturalWidth}x${image.naturalHeight}`) wrong.push(`${src} is ${image.naturalWidth}x${image.naturalHeight}`);
            if (!(await caches.match(image.src))) wrong.push(`${src} is not kept for the time without signal`);
          }
          return JSON.stringify({ wrong, bytes });
        }
        """;

    [Fact]
    public async Task App_IsInstallable_AndItsPicturesAreThere()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "install");
        await tablet.RegisterAsync();

        Assert.Empty(await ObjectionsAsync(tablet.Page));

        var icons = JsonDocument.Parse(await tablet.Page.EvaluateAsync<string>(LookAtIcons)).RootElement;
        Assert.Empty(icons.GetProperty("wrong").EnumerateArray().Select(line => line.GetString()));
        Assert.InRange(icons.GetProperty("bytes").GetInt32(), 1_000, MostBytes);
    }

    [Fact]
    public async Task App_WithoutPictures_IsRefusedByTheBrowser()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        link.Scripts["/capture/manifest.webmanifest"] = """{ "name": "LogBook", "start_url": "/capture/", "display": "standalone", "icons": [] }""";
        await using var tablet = await Tablet.StartAsync(link.Address, "install-refused");

        Assert.NotEmpty(await ObjectionsAsync(tablet.Page));
    }

    // What the browser has against the manifest, and against installing the app.
    private static async Task<string[]> ObjectionsAsync(IPage page)
    {
        var session = await page.Context.NewCDPSessionAsync(page);
        var manifest = (await session.SendAsync("Page.getAppManifest"))!.Value;
        Assert.EndsWith("/capture/manifest.webmanifest", manifest.GetProperty("url").GetString(), StringComparison.Ordinal);
        var installing = (await session.SendAsync("Page.getInstallabilityErrors"))!.Value;
        await session.DetachAsync();
        return
        [
            .. manifest.GetProperty("errors").EnumerateArray().Select(error => error.GetRawText()),
            .. installing.GetProperty("installabilityErrors").EnumerateArray().Select(error => error.GetProperty("errorId").GetString()!),
        ];
    }
}
