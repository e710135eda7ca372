using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using Microsoft.Playwright;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The pictures of the installed app are those of icon.svg. LOGBOOK_UPDATE=1 draws them anew.</summary>
public sealed class IconTests
{
    // Most that two drawings of one picture may differ, on the scale of 0 to 255: browsers smooth edges their own way.
    private const double MostDifference = 1.5;

    // Mean difference of two pictures over all pixels and channels.
    private const string Compare = """
        async (pictures) => {
          const [a, b] = await Promise.all(pictures.map(async (picture) => {
            const bitmap = await createImageBitmap(await (await fetch("data:image/png;base64," + picture)).blob());
            const canvas = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
            canvas.drawImage(bitmap, 0, 0);
            return [...canvas.getImageData(0, 0, bitmap.width, bitmap.height).data];
          }));
          return a.length === b.length ? a.reduce((sum, value, i) => sum + Math.abs(value - b[i]), 0) / a.length : 255;
        }
        """;

    // How many pixels outside the circle that every mask leaves (radius two fifths of the side, W3C Web Application Manifest) are not the plain ground.
    private const string OutsideSafeZone = """
        async (picture) => {
          const bitmap = await createImageBitmap(await (await fetch("data:image/png;base64," + picture)).blob());
          const { width: side } = bitmap;
          const smoothed = 4; // of 255: an edge of the ground upon the ground
          const canvas = new OffscreenCanvas(side, side).getContext("2d");
          canvas.drawImage(bitmap, 0, 0);
          const { data } = canvas.getImageData(0, 0, side, side);
          let others = 0;
          for (let y = 0; y < side; y++) for (let x = 0; x < side; x++) {
            if (Math.hypot(x + 0.5 - side / 2, y + 0.5 - side / 2) > side * 0.4 && [0, 1, 2, 3].some((i) => Math.abs(data[(y * side + x) * 4 + i] - data[i]) > smoothed)) others++;
          }
          return data[3] === 255 ? others : -1;
        }
        """;

    // Name, side, share of the side that the drawing takes; what is less than whole stands on the drawing's own ground.
    private static readonly (string Name, int Side, double Share, bool HasGround)[] Icons =
    [
        ("icon-192.png", 192, 1, false), ("icon-512.png", 512, 1, false), ("icon-maskable.png", 512, 0.9, true), ("icon-180.png", 180, 1, true),
    ];

    [Fact]
    public async Task Pictures_AreDrawnFromTheDrawing_AndAMaskCutsOffNothing()
    {
        var drawing = Convert.ToBase64String(await File.ReadAllBytesAsync(Path.Combine(Folder(), "icon.svg")));
        await using var browser = await TestBrowser.StartAsync("icons");
        var page = await browser.OpenAsync(new Uri("http://127.0.0.1"));
        foreach (var (name, side, share, hasGround) in Icons)
        {
            var drawn = await DrawAsync(page, drawing, side, share, hasGround);
            var path = Path.Combine(Folder(), name);
            if (Environment.GetEnvironmentVariable("LOGBOOK_UPDATE") == "1")
            {
                await File.WriteAllBytesAsync(path, drawn);
            }

            var kept = Convert.ToBase64String(await File.ReadAllBytesAsync(path));
            var difference = await page.EvaluateAsync<double>(Compare, new[] { Convert.ToBase64String(drawn), kept });
            Assert.True(difference <= MostDifference, $"{name} differs from icon.svg by {difference}; LOGBOOK_UPDATE=1 draws it.");
            if (share < 1)
            {
                Assert.Equal(0, await page.EvaluateAsync<int>(OutsideSafeZone, kept));
            }
        }
    }

    private static async Task<byte[]> DrawAsync(IPage page, string drawing, int side, double share, bool hasGround)
    {
        var ground = hasGround ? "#5b2a6e" : "transparent";
        var size = (side * share).ToString(CultureInfo.InvariantCulture);
        await page.SetContentAsync(
            $"<body style='margin:0;background:{ground};display:grid;place-items:center;width:{side}px;height:{side}px'><img width='{size}' height='{size}' src='data:image/svg+xml;base64,{drawing}'></body>");
        await page.EvaluateAsync("() => document.querySelector('img').decode()");
        return await page.ScreenshotAsync(new() { Clip = new() { X = 0, Y = 0, Width = side, Height = side }, OmitBackground = !hasGround });
    }

    private static string Folder()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "LogBook.sln")))
        {
            folder = folder.Parent!;
        }

        return Path.Combine(folder.FullName, "src", "LogBook.Capture", "wwwroot");
    }
}
