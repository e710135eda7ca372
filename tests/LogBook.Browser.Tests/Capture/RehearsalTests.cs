using LogBook.Browser.Tests.Jobs;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>What a tablet does beforehand so that a form opens sooner: out of sight, without a trace.</summary>
public sealed class RehearsalTests
{
    [Fact]
    public async Task ColdStart_WithoutSignal_RehearsesAForm_AndLeavesNothing()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "rehearsal");
        await tablet.RegisterAsync();
        link.Cut();
        await tablet.SwitchOffAsync();
        await tablet.StartBrowserAsync();
        List<string> faults = [];
        tablet.Page.Console += (_, message) =>
        {
            if (message.Type == "error" && !message.Text.Contains("net::", StringComparison.Ordinal))
            {
                faults.Add(message.Text);
            }
        };
        await tablet.Page.GotoAsync("/capture/");
        await tablet.UntilAsync("() => performance.getEntriesByName('form-rehearsed').length > 0");
        Assert.Empty(faults);
        Assert.Equal(0, await tablet.AskAsync<int>("store.js", "async (store) => (await store.all('drafts')).length + (await store.all('typed')).length"));
        await Expect(tablet.Page.Locator(".lb-form")).ToHaveCountAsync(0);
        await Expect(tablet.Page.Locator(".stop").First).ToBeVisibleAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
    }
}
