using System.Buffers.Binary;
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
        Assert.True(bytes.Length > 20_000, $"The picture holds {bytes.Length} bytes: nothing is drawn in it.");
        Assert.DoesNotContain(browser.Console, line => line.StartsWith("error", StringComparison.Ordinal) || line.StartsWith("uncaught", StringComparison.Ordinal));
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
}
