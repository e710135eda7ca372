using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>How long a tap or a key waits for the screen on a processor four times slower (event timing of the browser).</summary>
/// <remarks>The times are the machine's and are reported. On a quiet one LOGBOOK_INP=200 asserts them.</remarks>
public sealed class SlowTabletTests(ITestOutputHelper output)
{
    private const double Times = 4;
    private const int LeastInteractions = 40;

    // The browser gives one number to all events of one tap or key; the longest of them is what the person waited.
    private const string Watch = """
        () => {
          globalThis.waited = new Map();
          new PerformanceObserver((list) => {
            for (const { interactionId, duration, name } of list.getEntries()) {
              if (interactionId && duration > (waited.get(interactionId)?.duration ?? 0)) waited.set(interactionId, { duration, name });
            }
          }).observe({ type: "event", durationThreshold: 16, buffered: true });
        }
        """;

    [Fact]
    [Trait("goal", "P6")]
    public async Task Form_FourTimesSlower_TellsHowLongTapsAndKeysWait()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "slow-tablet");
        await tablet.RegisterAsync();
        await tablet.Page.ReloadAsync();
        await tablet.SlowDownAsync(Times);
        await tablet.Page.EvaluateAsync(Watch);
        await tablet.Page.GetByRole(AriaRole.Link, new() { Name = "Start the visit " + JobHost.Site }).ClickAsync();
        await Expect(tablet.Page.Locator("#pin")).ToBeFocusedAsync();
        await tablet.TypeLikeAHandAsync(Tablet.Pin + "\r", TimeSpan.FromMilliseconds(280));
        await Expect(tablet.Page.Locator(".lb-form .lb-body")).ToBeVisibleAsync();
        await tablet.Page.StepAsync(EntryTexts.Controller.En);
        await tablet.Page.EnterAllAsync(TypedVisit.Controller);
        await tablet.Page.StepAsync(EntryTexts.Water.En);
        await tablet.Page.EnterAllAsync(TypedVisit.Water);
        await tablet.Page.StepAsync(EntryTexts.Stock.En);
        await tablet.Page.EnterAllAsync(TypedVisit.Stock);
        await tablet.Page.StepAsync(EntryTexts.Close.En);
        var count = await tablet.Page.EvaluateAsync<int>("() => performance.interactionCount ?? waited.size");
        var waits = await tablet.Page.EvaluateAsync<double[]>("() => [...waited.values()].map(({ duration }) => duration)");
        var longest = await tablet.Page.EvaluateAsync<string>("() => [...waited.values()].sort((a, b) => b.duration - a.duration).slice(0, 5).map(({ duration, name }) => `${name} ${duration} ms`).join(', ')");

        // Interactions under 16 ms are counted and not listed. INP is the longest but one for each fifty of them.
        double[] sorted = [.. waits.OrderDescending()];
        var inp = sorted.Length == 0 ? 16 : sorted[Math.Min(count / 50, sorted.Length - 1)];
        output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{count} interactions at {Times}x slow-down: INP {inp:0} ms, median of those above 16 ms {(sorted.Length == 0 ? 16 : sorted[sorted.Length / 2]):0} ms; longest: {longest}"));
        Assert.True(count >= LeastInteractions, $"Only {count} interactions were seen.");
        if (double.TryParse(Environment.GetEnvironmentVariable("LOGBOOK_INP"), CultureInfo.InvariantCulture, out var most))
        {
            Assert.True(inp <= most, $"INP is {inp} ms: {longest}");
        }
    }
}
