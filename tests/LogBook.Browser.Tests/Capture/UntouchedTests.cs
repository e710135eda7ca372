using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A form that was opened and left without an entry leaves nothing behind; one key makes a draft of it.</summary>
public sealed class UntouchedTests
{
    private const string Notes = "visit/notes";
    private const string Kept = "async (store) => (await store.all('drafts')).length";

    [Fact]
    public async Task Form_LeftWithoutAnEntry_LeavesNoDraft_OneWithAnEntryDoes()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "untouched");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Stock.En);
        Assert.Equal(1, await tablet.AskAsync<int>("store.js", Kept));

        await tablet.GoHomeAsync();
        Assert.Equal(0, await tablet.AskAsync<int>("store.js", Kept));
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Throw away" })).ToHaveCountAsync(0);

        // An amendment that changes nothing is none.
        await tablet.Page.GotoAsync($"/capture/#/amend/{JobHost.Site}/0198b000-0000-7000-8000-000000000003");
        await Expect(tablet.Page.Locator(".lb-form")).ToContainTextAsync(EntryTexts.Amendment.En);
        await tablet.GoHomeAsync();
        Assert.Equal(0, await tablet.AskAsync<int>("store.js", Kept));

        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.Field(Notes).PressSequentiallyAsync("n");
        await tablet.GoHomeAsync();
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Throw away" })).ToHaveCountAsync(1);
        await tablet.PictureAsync("begun");
    }

    [Fact]
    [Trait("goal", "R4")]
    public async Task DeadBattery_LeavesTheKeysOfAForm_AndNothingOfOneWithout()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "untouched-dead");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.DieAsync();
        await tablet.SwitchOnAsync();
        await Expect(tablet.Page.Locator(".stop").First).ToBeVisibleAsync();
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Throw away" })).ToHaveCountAsync(0);

        // The next form at the site is a new one and takes no second place.
        await tablet.OpenVisitAsync(JobHost.Site);
        Assert.Equal(1, await tablet.AskAsync<int>("store.js", Kept));
        await tablet.Page.Field(Notes).PressSequentiallyAsync("noise in the fan");
        await tablet.UntilAsync("async () => (await (await import('/capture/store.js')).all('typed')).length === 1 || !(await (await import('/capture/store.js')).all('drafts'))[0].untouched");
        await tablet.DieAsync();
        await tablet.SwitchOnAsync();
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Throw away" })).ToHaveCountAsync(1);
        await tablet.OpenVisitAsync(JobHost.Site);
        await Expect(tablet.Page.Field(Notes)).Not.ToHaveValueAsync("");
    }
}
