using System.Buffers.Binary;
using System.Diagnostics;
using LogBook.Browser.Tests.Browsers;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

public sealed class HistoryChartTests
{
    private const string Live = ".chart-live";

    [Fact]
    public async Task Chart_PinchedAndSaved_ShowsAShorterPeriodAndGivesAPicture()
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("history-chart");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Supervisor);
        await SupervisorPages.ReceiveVisitAsync(host);
        await page.GoToAsync("site history", $"/sites/{JobHost.Site}/systems/CT-1?from=2025-03-01&to=2025-03-31");

        // What is in view is said by the buttons: a step to later and back stays in the scale that the fingers left.
        await page.Locator("[data-act=earlier]").ClickAsync();
        Assert.Equal(31, await DaysShownAsync(page), 0.1);
        await PinchAsync(page);
        await page.Locator("[data-act=earlier]").ClickAsync();
        Assert.InRange(await DaysShownAsync(page), 1, 25);
        await page.Locator("[data-act=whole]").ClickAsync();
        Assert.Equal(31, await DaysShownAsync(page), 0.1);

        var download = await page.RunAndWaitForDownloadAsync(() => page.Locator("[data-act=picture]").ClickAsync());

        Assert.Equal($"{JobHost.Site}-CT-1-2025-03-01.png", download.SuggestedFilename);
        await using var stream = await download.CreateReadStreamAsync();
        using var kept = new MemoryStream();
        await stream.CopyToAsync(kept);
        var bytes = kept.ToArray();
        Assert.Equal([0x89, (byte)'P', (byte)'N', (byte)'G'], bytes[..4]);
        Assert.Equal(2400, BinaryPrimitives.ReadInt32BigEndian(bytes.AsSpan(16)));
        var picture = await page.EvaluateAsync<PictureLegend>(ReadLegend, Convert.ToBase64String(bytes));
        Assert.True(picture.FirstInk > 40 && picture.SecondInk > 40, $"The legend shows no mark of its two series: {picture}");
        Assert.True(picture.Words > 1000, $"The legend has no words: {picture}");
        Assert.Equal(0, picture.Transparent);
        Assert.Equal(0, picture.AtEdge);
        Assert.DoesNotContain(browser.Console, line => line.StartsWith("error", StringComparison.Ordinal) || line.StartsWith("uncaught", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Chart_PrintedFromADarkScreen_IsDrawnInLightAndComesBack()
    {
        await using var host = await JobHost.StartAsync();
        await using var browser = await TestBrowser.StartAsync("history-print");
        var page = await browser.OpenAsync(host.Address);
        await page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await page.SignInAsync(JobHost.Supervisor);
        await page.GoToAsync("site history", $"/sites/{JobHost.Site}/systems/CT-1?from=2025-03-01&to=2025-03-31");
        await page.WaitForFunctionAsync(DrawnIn("dark"));

        await page.EmulateMediaAsync(new() { Media = Media.Print, ColorScheme = ColorScheme.Dark });
        await page.WaitForFunctionAsync(DrawnIn("light"));
        await browser.PictureAsync(page, "as print");
        await page.EmulateMediaAsync(new() { Media = Media.Null, ColorScheme = ColorScheme.Dark });
        await page.WaitForFunctionAsync(DrawnIn("dark"));

        // What the printer gets: the line of the first series in its colour for paper, none in that for the dark.
        var paper = await PrintedAsync(page, browser.Pictures);
        Assert.True(Near(paper, 0x00, 0x56, 0x8f) > 50, "The printed chart shows no line in the colour for paper.");
        Assert.Equal(0, Near(paper, 0x7c, 0xc4, 0xf5));
        await page.WaitForFunctionAsync(DrawnIn("dark"));
    }

    // The texts of the chart have one colour on dark and another on light ground.
    private static string DrawnIn(string look) => $$"""
        () => {
          let onDark = 0, onLight = 0;
          for (const canvas of document.querySelectorAll(".chart-root canvas")) {
            const pixels = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height).data;
            for (let i = 0; i < pixels.length; i += 4) {
              if (pixels[i + 3] < 255) continue;
              if (pixels[i] === 0xf2 && pixels[i + 1] === 0xf2 && pixels[i + 2] === 0xf2) onDark++;
              if (pixels[i] === 0x1b && pixels[i + 1] === 0x1b && pixels[i + 2] === 0x1b) onLight++;
            }
          }
          const [most, none] = "{{look}}" === "dark" ? [onDark, onLight] : [onLight, onDark];
          return most > 200 && none === 0;
        }
        """;

    // The foot of the picture, below the last panel: only a legend has the colours of series there.
    private const string ReadLegend = """
        async text => {
          const bytes = Uint8Array.from(atob(text), one => one.charCodeAt(0));
          const image = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
          const canvas = new OffscreenCanvas(image.width, image.height), pen = canvas.getContext("2d");
          pen.drawImage(image, 0, 0);
          const foot = 176, edge = 32, top = image.height - foot;
          const pixels = pen.getImageData(0, top, image.width, foot).data;
          const found = { firstInk: 0, secondInk: 0, words: 0, transparent: 0, atEdge: 0 };
          for (let i = 0; i < pixels.length; i += 4) {
            const color = (pixels[i] << 16) | (pixels[i + 1] << 8) | pixels[i + 2];
            if (pixels[i + 3] < 255) found.transparent++;
            if (color === 0x00568f) found.firstInk++;
            if (color === 0x8a4b00) found.secondInk++;
            if (color === 0x1b1b1b) found.words++;
            if (color !== 0xffffff && (i / 4) % image.width >= image.width - edge && i / 4 / image.width >= foot - 88) found.atEdge++;
          }
          return found;
        }
        """;

    // The pages as an image of red, green and blue, one after the other.
    private static async Task<byte[]> PrintedAsync(IPage page, string folder)
    {
        var file = Path.Combine(folder, "printed.pdf");
        await page.PdfAsync(new() { Path = file, Format = "A4", PrintBackground = true });
        using var painting = Process.Start("pdftoppm", ["-r", "150", file, Path.Combine(folder, "printed")])!;
        await painting.WaitForExitAsync();
        Assert.Equal(0, painting.ExitCode);
        var pixels = new List<byte>();
        foreach (var sheet in Directory.GetFiles(folder, "printed-*.ppm"))
        {
            var bytes = await File.ReadAllBytesAsync(sheet);
            var (lines, start) = (0, 0);
            while (lines < 3)
            {
                lines += bytes[start++] == '\n' ? 1 : 0;
            }

            pixels.AddRange(bytes[start..]);
            File.Delete(sheet);
        }

        return [.. pixels];
    }

    private static int Near(byte[] pixels, byte red, byte green, byte blue)
    {
        const int Away = 16;
        var count = 0;
        for (var i = 0; i + 2 < pixels.Length; i += 3)
        {
            count += Math.Abs(pixels[i] - red) < Away && Math.Abs(pixels[i + 1] - green) < Away && Math.Abs(pixels[i + 2] - blue) < Away ? 1 : 0;
        }

        return count;
    }

    // Two fingers that part on the first panel.
    private static async Task PinchAsync(IPage page)
    {
        var plot = page.Locator(".chart-plot");
        await plot.ScrollIntoViewIfNeededAsync();
        var box = (await plot.BoundingBoxAsync())!;
        var session = await page.Context.NewCDPSessionAsync(page);
        var (middle, y) = (box.X + (box.Width / 2), box.Y + 80);
        foreach (var (type, apart) in new[] { ("touchStart", 30), ("touchMove", 60), ("touchMove", 100), ("touchMove", 150), ("touchMove", 200) })
        {
            await session.SendAsync("Input.dispatchTouchEvent", new()
            {
                ["type"] = type,
                ["touchPoints"] = new[] { new { x = middle - apart, y, id = 1 }, new { x = middle + apart, y, id = 2 } },
            });
        }

        await session.SendAsync("Input.dispatchTouchEvent", new() { ["type"] = "touchEnd", ["touchPoints"] = Array.Empty<object>() });
    }

    private static async Task<double> DaysShownAsync(IPage page)
    {
        await Expect(page.Locator(Live)).ToContainTextAsync(" – ");
        var ends = (await page.Locator(Live).TextContentAsync())!.Split(" – ").Select(end => DateTime.Parse(end, System.Globalization.CultureInfo.GetCultureInfo("en-GB"))).ToList();
        return (ends[1] - ends[0]).TotalDays;
    }

    private sealed record PictureLegend
    {
        public int FirstInk { get; init; }

        public int SecondInk { get; init; }

        public int Words { get; init; }

        public int Transparent { get; init; }

        public int AtEdge { get; init; }
    }
}
