using LogBook.Browser.Tests.Browsers;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests;

public sealed class FrameTests : IClassFixture<BrowserHost>
{
    private readonly BrowserHost _host;

    public FrameTests(BrowserHost host) => _host = host;

    [Theory]
    [InlineData(1280, 900)]
    [InlineData(820, 1180)]
    [InlineData(390, 844)]
    [InlineData(320, 640)]
    [Trait("goal", "S3")]
    [Trait("goal", "U3")]
    public async Task Pages_EveryWidth_FitWithoutComplaints(int width, int height)
    {
        var page = await _host.PageAsync(width, height);
        await BrowserHost.SignInAsync(page, "supervisor@quernwath.example");
        foreach (var path in new[] { "/", "/attention", "/sites", "/visits", "/tokens", "/mail", "/help", "/account" })
        {
            await page.GotoAsync(path);
            await Expect(page.Locator("h1").First).ToBeVisibleAsync();

            Assert.True(await page.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth"), $"{path} is wider than {width} px.");
        }

        await page.Context.CloseAsync();
        Assert.Empty(_host.Complaints);
    }

    [Fact]
    public async Task Look_ChosenDark_IsRememberedWithoutTheServer()
    {
        var page = await _host.PageAsync();
        await BrowserHost.SignInAsync(page, "supervisor@quernwath.example");
        var light = await BackgroundAsync(page);

        // A menu that was opened in the picture before is closed again when the page comes alive.
        await page.IsLiveAsync();
        await page.ClickAsync(".top-person summary");
        await page.ClickAsync("[data-set-look=dark]");
        var dark = await BackgroundAsync(page);
        await page.ReloadAsync();

        Assert.NotEqual(light, dark);
        Assert.Equal(dark, await BackgroundAsync(page));
        await page.Context.CloseAsync();
    }

    [Fact]
    [Trait("goal", "U5")]
    public async Task VisitForm_PageLoadedAgain_KeepsWhatWasTyped()
    {
        var page = await _host.PageAsync(820, 1180);
        await BrowserHost.SignInAsync(page, "technician@quernwath.example");
        await page.GotoAsync("/visit/SIT-A");
        var field = page.Locator(".lb-form textarea:visible").First;
        await Expect(page.Locator(".lb-form")).ToBeVisibleAsync();
        await page.IsLiveAsync();
        await field.FillAsync("fill looks clean, seven nozzles wet");
        await field.BlurAsync();
        await Expect(page.GetByText("Draft on the server")).ToBeVisibleAsync(new() { Timeout = 10_000 });

        await page.ReloadAsync();

        await Expect(page.Locator(".lb-form textarea:visible").First).ToHaveValueAsync("fill looks clean, seven nozzles wet");
        await page.Context.CloseAsync();
        Assert.Empty(_host.Complaints);
    }

    private static Task<string> BackgroundAsync(IPage page) => page.EvaluateAsync<string>("getComputedStyle(document.querySelector('.page')).backgroundColor");
}
