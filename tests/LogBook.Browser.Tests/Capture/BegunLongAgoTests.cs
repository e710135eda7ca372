using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A visit that was begun days ago is no part of today's unless its person says so.</summary>
public sealed class BegunLongAgoTests
{
    private const string Rows = "async (desk) => (await desk.drafts()).map((row) => row.id)";

    [Fact]
    public async Task Start_WhereAVisitWasBegunDaysAgo_AsksAndLosesNothing()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "begun-long-ago");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.EnterAsync("visit/notes", "noise in the fan");
        await tablet.GoHomeAsync();
        var begun = Assert.Single(await tablet.AskAsync<string[]>("desk.js", Rows));

        // Minutes later it simply goes on.
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.GoHomeAsync();
        Assert.Equal(begun, Assert.Single(await tablet.AskAsync<string[]>("desk.js", Rows)));

        await tablet.AskAsync<object?>("store.js", "(store, id) => store.change('drafts', id, (row) => ({ ...row, at: row.at - 3 * 86400000 }))", begun);
        await tablet.Page.GotoAsync("/capture/#/visit/" + JobHost.Site);
        await Expect(tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Go on with that visit" })).ToBeVisibleAsync();
        await tablet.PictureAsync("asks");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Arrive anew" }).ClickAsync();
        await Expect(tablet.Page.Locator(".lb-form")).ToBeVisibleAsync();
        await tablet.Page.EnterAsync("visit/notes", "another day");
        await tablet.GoHomeAsync();

        var rows = await tablet.AskAsync<string[]>("desk.js", Rows);
        Assert.Equal(2, rows.Length);
        Assert.Contains(begun, rows);
    }
}
