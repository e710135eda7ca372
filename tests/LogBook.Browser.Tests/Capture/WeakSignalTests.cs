using LogBook.Browser.Tests.Jobs;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A signal too weak for the worker that keeps the form on the tablet.</summary>
public sealed class WeakSignalTests
{
    // The browser's own refusal, as long as the test says so.
    private const string Weak = """
        if (navigator.serviceWorker) {
          const register = navigator.serviceWorker.register.bind(navigator.serviceWorker);
          navigator.serviceWorker.register = (...given) => localStorage.getItem("test-weak") === "yes"
            ? Promise.reject(new TypeError("Failed to register a ServiceWorker: an unknown error occurred when fetching the script."))
            : register(...given);
        }
        """;

    private const string NotReady = "Opening without signal is not ready on this tablet yet.";

    [Fact]
    public async Task Worker_ThatCannotBeFetched_LeavesTheView_SaysSo_AndComesWhenTheSignalIsBack()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "weak-signal", host.Clock.GetUtcNow(), platform: Weak);
        await tablet.RegisterAsync();
        await tablet.Page.EvaluateAsync("""
            async () => {
              localStorage.setItem("test-weak", "yes");
              await (await navigator.serviceWorker.getRegistration("/capture/")).unregister();
            }
            """);

        await tablet.Page.GotoAsync("/capture/?again");
        var note = tablet.Page.Locator("#view .note", new() { HasText = NotReady });
        await Expect(note).ToBeVisibleAsync();
        await Expect(tablet.Page.Locator(".stop").First).ToBeVisibleAsync();
        await Expect(tablet.Page.Locator("#view > .problem")).ToHaveCountAsync(0);
        await tablet.PictureAsync("not-ready");

        await tablet.Page.EvaluateAsync("() => { localStorage.setItem('test-weak', 'no'); dispatchEvent(new Event('online')); }");

        await Expect(note).ToHaveCountAsync(0);
        await tablet.UntilAsync("async () => Boolean((await navigator.serviceWorker.getRegistration('/capture/'))?.active)");
    }
}
