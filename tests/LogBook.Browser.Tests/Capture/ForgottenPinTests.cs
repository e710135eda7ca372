using LogBook.Application.Data;
using LogBook.Application.Tokens;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Texts;
using LogBook.Web.Features.Tokens;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A PIN is forgotten while a draft lies under it: with a supervisor's help it is opened again, whole.</summary>
public sealed class ForgottenPinTests
{
    private const string Notes = "visit/notes";
    private const string NewPin = "135791";

    [Fact]
    public async Task Forgotten_SupervisorReleases_DraftOpensUnderTheNewPin()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "forgotten-pin");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await tablet.Page.EnterAsync(Notes, "noise in the fan");
        await tablet.GoHomeAsync();
        await HeldAsync(host, 1);

        await tablet.Page.GotoAsync("/capture/#/who");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "I forgot the PIN" }).ClickAsync();
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Ask the supervisor" }).ClickAsync();
        await Expect(tablet.Page.GetByText("this page goes on by itself")).ToBeVisibleAsync();
        await tablet.PictureAsync("asked");
        await using (var desk = await TestBrowser.StartAsync("forgotten-pin-desk"))
        {
            var page = await desk.OpenAsync(host.Address);
            await page.SignInAsync(JobHost.Supervisor);
            await page.GoAsync("/tokens");
            await desk.PictureAsync(page, "asked");
            await page.GetByRole(AriaRole.Button, new() { Name = TokenTexts.Release.En }).ClickAsync();
            await Expect(page.Locator("#key-released")).ToContainTextAsync("Barge tablet");
        }

        await tablet.Page.FillAsync("#pin", NewPin);
        await tablet.Page.FillAsync("#pin-again", NewPin);
        await tablet.PictureAsync("new-pin");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Change the PIN" }).ClickAsync();
        await Expect(tablet.Page.Locator("#who")).ToContainTextAsync("At the tablet");
        await tablet.Page.GotoAsync("/capture/#/visit/" + JobHost.Site);
        await Expect(tablet.Page.Locator(".lb-form")).ToBeVisibleAsync();
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await Expect(tablet.Page.Field(Notes)).ToHaveValueAsync("noise in the fan");

        // The key that was out is replaced, and the old PIN opens nothing any more.
        await HeldAsync(host, 1);
        Assert.False(await tablet.AskAsync<bool>("people.js", "async (people, pin) => Boolean((await people.unlock('RYA', pin)).code)", Tablet.Pin));
        Assert.True(await tablet.AskAsync<bool>("people.js", "async (people, pin) => Boolean((await people.unlock('RYA', pin)).code)", NewPin));
    }

    [Fact]
    public async Task TwoReplaceAtOnce_OneKeyStaysOnTheServer()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "second-key-at-once");
        await tablet.RegisterAsync();
        await HeldAsync(host, 1);

        // As after a release: the key that was out is marked, and both the new PIN and the unlocking see to another.
        await tablet.AskAsync<int>(
            "store.js",
            "async (store, code) => { await store.change('people', code, (row) => ({ ...row, seconds: row.seconds.map((one) => ({ ...one, spent: true })) })); return 0; }",
            "RYA");
        await tablet.AskAsync<int>("second.js", "async (second, code) => (await Promise.all([second.arrange(code), second.arrange(code)])).length", "RYA");

        Assert.Equal(1, await CountAsync(host, CancellationToken.None));
        Assert.True(await tablet.AskAsync<bool>("people.js", "async (people, code) => (await people.person(code)).seconds.every((one) => one.held && !one.spent)", "RYA"));
    }

    private static Task<int> CountAsync(JobHost host, CancellationToken cancellationToken) => host.App.Services.GetRequiredService<LogBookStore>().ReadAsync(
        Viewer.System("test"), db => db.SetUp.CountAsync(row => row.Kind == SetUpKind.TabletKey, cancellationToken), cancellationToken);

    // Waits until the server holds the second key; looks again at intervals because a database calls nobody.
    private static async Task HeldAsync(JobHost host, int keys)
    {
        using var within = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        using var timer = new PeriodicTimer(TimeSpan.FromMilliseconds(50));
        while (await CountAsync(host, within.Token) != keys)
        {
            await timer.WaitForNextTickAsync(within.Token);
        }
    }
}
