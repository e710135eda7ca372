using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Leaving the form in haste, going back in the browser, and a second window: what stands is what was entered last.</summary>
public sealed class LeavingTests
{
    private const string Notes = "visit/notes";

    [Fact]
    [Trait("goal", "U5")]
    public async Task Leave_RightAfterTypingAndTapping_KeepsTheLastOfBoth()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "leaving");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        var notes = tablet.Page.Field(Notes);
        await notes.ClickAsync();
        await notes.PressSequentiallyAsync("noise in the fan");

        // A phrase is added by a tap while the keys have hardly been kept.
        await tablet.Page.Locator(".lb-phrases button").First.ClickAsync();
        await Expect(notes).Not.ToHaveValueAsync("noise in the fan");
        var entered = await notes.InputValueAsync();
        await tablet.GoHomeAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await Expect(notes).ToHaveValueAsync(entered);

        // The last key was never left.
        await notes.PressAsync("End");
        await notes.PressSequentiallyAsync(" again");
        await tablet.GoHomeAsync();
        await tablet.OpenVisitAsync(JobHost.Site);
        await tablet.Page.StepAsync(EntryTexts.Arrive.En);
        await Expect(notes).ToHaveValueAsync(entered + " again");
        Assert.Contains("noise in the fan", entered, StringComparison.Ordinal);
    }

    [Fact]
    public async Task SecondWindow_OfTheSameSite_IsToldToWait()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "second-window");
        await tablet.RegisterAsync();
        await tablet.OpenVisitAsync(JobHost.Site);

        var second = await tablet.Page.Context.NewPageAsync();
        await second.GotoAsync("/capture/#/visit/" + JobHost.Site);
        await second.FillAsync("#pin", Tablet.Pin);
        await second.GetByRole(AriaRole.Button, new() { Name = "Open", Exact = true }).ClickAsync();
        await Expect(second.GetByText("is open in another window of this tablet")).ToBeVisibleAsync();
        await Expect(second.Locator(".lb-form")).ToHaveCountAsync(0);

        // Once the first has let go, the second may open it; nothing was entered in the first.
        await tablet.GoHomeAsync();
        await second.GetByRole(AriaRole.Button, new() { Name = "To the round" }).ClickAsync();
        await second.GotoAsync("/capture/#/visit/" + JobHost.Site);
        await Expect(second.Locator(".lb-form")).ToBeVisibleAsync();
        Assert.Single(await tablet.AskAsync<string[]>("desk.js", "async (desk) => (await desk.drafts()).map((row) => row.id)"));
    }
}
