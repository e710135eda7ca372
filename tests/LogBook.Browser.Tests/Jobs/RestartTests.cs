using System.Diagnostics;
using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using LogBook.Entry.Texts;
using LogBook.Web.Features.VisitForms;
using Microsoft.Playwright;
using Xunit.Abstractions;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>The server is restarted while forms are open on its pages, as an update does it.</summary>
public sealed class RestartTests(ITestOutputHelper output)
{
    private const string Notes = "visit/notes";

    // Milliseconds. At every picture, as is usual, the asking itself would keep a browser of many tabs busy.
    private const float LookEvery = 200;

    private static readonly TimeSpan StopsWithin = TimeSpan.FromSeconds(30);

    private static readonly TimeSpan BackWithin = TimeSpan.FromSeconds(10);

    // Each form is a tab of a real browser: the long form asks for LOGBOOK_FORMS=50.
    private static int Forms => int.TryParse(Environment.GetEnvironmentVariable("LOGBOOK_FORMS"), CultureInfo.InvariantCulture, out var given) ? given : 6;

    // The seconds of the tabs are those of a browser on the same machine: a busy one is not failed by them, but every tab must be back.
    private static bool IsLongForm => Environment.GetEnvironmentVariable("LOGBOOK_FORMS") is not null;

    [Fact]
    [Trait("goal", "R8")]
    public async Task Restart_WithOpenForms_EveryTabIsBackAtItsDraft()
    {
        var folder = await SampleFolder.MakeAsync(Forms);
        try
        {
            await using var server = new ServerProcess(folder);
            await server.StartAsync();
            await using var browser = await TestBrowser.StartAsync("restart");
            var first = await browser.OpenAsync(server.Address);
            await first.SignInAsync(JobHost.Technician);
            List<IPage> tabs = [];
            for (var i = 0; i < Forms; i++)
            {
                var tab = await first.Context.NewPageAsync();
                await tab.GoAsync("/visit/" + SampleFolder.Site(i));
                await tab.StepAsync(EntryTexts.Arrive.En);
                await tab.EnterAsync(Notes, Typed(i));
                tabs.Add(tab);
            }

            // What the page says is kept must be there afterwards.
            var kept = VisitTexts.SavedAt.En.Replace("{0}", string.Empty, StringComparison.Ordinal).Trim();
            foreach (var tab in tabs)
            {
                await Expect(tab.Locator("p.loading[role=status]")).ToContainTextAsync(kept);
            }

            // A value that a page made before the restart is gone only where the page was loaded anew.
            foreach (var tab in tabs)
            {
                await tab.EvaluateAsync("() => { globalThis.before = true; }");
            }

            var stopped = await server.TerminateAsync();
            await server.StartAsync();
            var (started, startedAt) = (Stopwatch.GetTimestamp(), TimeProvider.System.GetUtcNow());
            var back = await Task.WhenAll(tabs.Select((tab, i) => BackAsync(tab, Typed(i), started)));

            // When the page that came back was asked for: what lies before is waiting, what lies after is work of server and browser.
            var asked = await Task.WhenAll(tabs.Select(tab => tab.EvaluateAsync<double>("() => performance.timeOrigin")));
            var waited = asked.Select(at => (DateTimeOffset.UnixEpoch.AddMilliseconds(at) - startedAt).TotalSeconds).ToList();
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{Forms} open forms: stopped after {stopped.TotalSeconds:0.0} s; asked for anew {waited.Min():0.0} to {waited.Max():0.0} s, back at the draft {back.Min().TotalSeconds:0.0} to {back.Max().TotalSeconds:0.0} s after the start."));
            await browser.PictureAsync(tabs[^1], "back");
            Assert.True(stopped <= StopsWithin, $"The server took {stopped} to stop.");
            if (IsLongForm)
            {
                Assert.True(back.Max() <= BackWithin, $"The last tab was back {back.Max()} after the start.");
            }
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static async Task<TimeSpan> BackAsync(IPage tab, string text, long started)
    {
        await tab.WaitForFunctionAsync(
            "([id, text]) => !globalThis.before && document.querySelector('main[data-live]') && document.getElementById(id)?.value === text && !document.querySelector('dialog[open]')",
            new[] { LogBook.Entry.Drafts.DraftKey.ElementId(Notes), text },
            new() { PollingInterval = LookEvery });
        return Stopwatch.GetElapsedTime(started);
    }

    private static string Typed(int i) => string.Create(CultureInfo.InvariantCulture, $"tab {i}: fan noise");
}
