using LogBook.Application.Data;
using LogBook.Application.Sites;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Domain.Sites;
using LogBook.Entry.Texts;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The minutes of settling that are set for a system are those that both forms ask for, also without signal.</summary>
public sealed class OwnThresholdTests
{
    [Fact]
    public async Task Settling_OfTheSystem_RunsOnTheServerAndWithoutSignal()
    {
        await using var host = await JobHost.StartAsync();
        var administrator = new Viewer(null, "office", null, PersonRole.Administrator, null, Language.English);
        Assert.IsType<SaveOutcome.Saved>(await host.App.Services.GetRequiredService<SettingStore>().SaveAsync(
            administrator, new OwnSetting("thresholds:settledMinutes", JobHost.Site, "CT-1", 12, "slow meters"), 0));
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "own-threshold");
        await tablet.RegisterAsync();

        await tablet.Page.GoAsync("/visit/" + JobHost.Site);
        await SettlesAsync(tablet.Page);
        link.Cut();
        await tablet.Page.GotoAsync("/capture/");
        await tablet.OpenVisitAsync(JobHost.Site);
        await SettlesAsync(tablet.Page);
        await tablet.PictureAsync("settles");
    }

    private static async Task SettlesAsync(IPage page)
    {
        await page.StepAsync(EntryTexts.Reference.En);
        await page.GetByRole(AriaRole.Button, new() { Name = StepTexts.StartSettling.En }).First.ClickAsync();
        await Expect(page.Locator(".lb-timers").First).ToContainTextAsync("12\u00a0min to go");
    }
}
