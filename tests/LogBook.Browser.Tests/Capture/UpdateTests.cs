using System.Text.RegularExpressions;
using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A new version of the tablet's program comes while a visit is being entered.</summary>
public sealed partial class UpdateTests
{
    private const string Notes = "visit/notes";
    private const string List = "/capture/assets.js";

    [Fact]
    [Trait("goal", "R4")]
    public async Task NewVersion_WhileAFormIsOpen_WaitsForThePerson_AndLosesNoKey()
    {
        await using var host = await JobHost.StartAsync();
        await using var link = new Link(host.Address);
        await using var tablet = await Tablet.StartAsync(link.Address, "update");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        var notes = tablet.Page.Field(Notes);
        await notes.ClickAsync();
        await notes.PressSequentiallyAsync("noise in the fan");
        var before = await VersionsAsync(tablet);

        await ServeAnotherVersionAsync(host, link);
        await tablet.Page.EvaluateAsync(
            """
            async () => {
              const registration = await navigator.serviceWorker.ready;
              await registration.update();
              while (!registration.waiting) await new Promise(requestAnimationFrame);
            }
            """);

        // The form is left alone, and the last key was never left.
        await notes.PressSequentiallyAsync(" again");
        await Expect(tablet.Page.GetByText("A new version is here.")).ToHaveCountAsync(0);
        await tablet.GoHomeAsync();
        await tablet.PictureAsync("offered");
        await tablet.Page.EvaluateAsync("() => { globalThis.before = true; }");
        await tablet.Page.GetByRole(AriaRole.Button, new() { Name = "Load it" }).ClickAsync();
        await tablet.Page.WaitForFunctionAsync("() => !globalThis.before && document.documentElement.dataset.ready === 'shell'");

        Assert.NotEqual(before, await VersionsAsync(tablet));
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await Expect(notes).ToHaveValueAsync("noise in the fan again");
    }

    private static async Task ServeAnotherVersionAsync(JobHost host, Link link)
    {
        using var client = new HttpClient { BaseAddress = host.Address };
        var list = await client.GetStringAsync(List);
        var changed = Version().Replace(list, "\"version\": \"another\"", 1);
        Assert.NotEqual(list, changed);
        link.Scripts[List] = changed;
    }

    private static async Task<string> VersionsAsync(Tablet tablet) =>
        string.Join(' ', await tablet.Page.EvaluateAsync<string[]>("async () => (await caches.keys()).filter((name) => name.startsWith('logbook-capture-'))"));

    [GeneratedRegex("\"version\":\\s*\"[^\"]*\"", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex Version();
}
