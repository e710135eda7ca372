using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Domain.Visits;
using LogBook.Entry.Drafts;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>A whole visit on the tablet without a pointer: from the PIN to the closed visit, nothing but keys.</summary>
public sealed class KeyboardVisitTests
{
    private static readonly Text[] Steps =
    [
        EntryTexts.Controller, EntryTexts.Reference, EntryTexts.Water, EntryTexts.Stock, EntryTexts.Tower, EntryTexts.Samples, EntryTexts.Adjust, EntryTexts.Close,
    ];

    [Fact]
    [Trait("goal", "U3")]
    public async Task Visit_KeysAlone_FromThePinToTheClosedVisit_AndTheFocusIsNeverLost()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "keyboard-visit");
        await tablet.RegisterAsync();
        await tablet.Page.ReloadAsync();
        await Expect(tablet.Page.Locator("html[data-ready=shell]")).ToHaveCountAsync(1);
        var keys = new Keys(tablet.Page);
        await keys.GoAsync($"#view a[href$='/{JobHost.Site}']");
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Locator("#pin")).ToBeFocusedAsync();
        await keys.TypeAsync(Tablet.Pin);
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Locator(".lb-form .lb-next")).ToBeVisibleAsync();
        await keys.IsSomewhereAsync();

        await ArriveAsync(keys, tablet);
        foreach (var step in Steps)
        {
            await keys.GoAsync(".lb-next");
            await keys.PressAsync("Enter");
            await Expect(tablet.Page.Locator("#visit-step")).ToHaveTextAsync(step.En);
            await Expect(tablet.Page.Locator("#visit-step")).ToBeFocusedAsync();
            await FillAsync(keys, tablet, step);
        }

        await CloseAsync(keys, tablet);

        var row = tablet.Page.Locator(".stop").Filter(new() { Has = tablet.Page.Locator(".mark.device, .mark.server, .mark.mailed") });
        await Expect(row).ToContainTextAsync(JobHost.Site);
        await Expect(tablet.Page.Locator(".mark.server, .mark.mailed")).ToHaveCountAsync(1);
        await keys.IsSomewhereAsync();
        await keys.GoAsync("a[href^='#/closed/']");
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Locator(".closed-visit")).ToContainTextAsync("1232");
        await keys.IsSomewhereAsync();
    }

    // The first step, and work that stops and goes on.
    private static async Task ArriveAsync(Keys keys, Tablet tablet)
    {
        await keys.GoAsync(".lb-stop");
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Field("visit/reason")).ToBeFocusedAsync();
        await keys.GoAsync(".lb-stopped > button:last-child");
        await keys.PressAsync("Space");
        await Expect(tablet.Page.Locator(".lb-stopped")).ToHaveCountAsync(0);
        await keys.IsSomewhereAsync();
        var running = TypedVisit.Of("running");
        await keys.GoAsync("#" + DraftKey.ElementId(running));
        await keys.PressAsync("Space");
        await Expect(tablet.Page.Locator("#" + DraftKey.ElementId(running))).ToHaveAttributeAsync("aria-pressed", "true");
        await keys.IsSomewhereAsync();
    }

    private static async Task FillAsync(Keys keys, Tablet tablet, Text step)
    {
        if (step == EntryTexts.Controller)
        {
            await EnterAsync(keys, tablet, TypedVisit.Controller);
            await PressNamedAsync(keys, tablet, StepTexts.AllAutomaticFound.En);
            await WalkAsync(keys, tablet);
        }
        else if (step == EntryTexts.Reference)
        {
            var instrument = TypedVisit.Of("probes", "C1", "instrument");
            await keys.GoAsync("#" + DraftKey.ElementId(instrument));
            await keys.PressAsync("ArrowDown");
            await Expect(tablet.Page.Field(instrument)).ToHaveValueAsync("HM-1");
            await EnterAsync(keys, tablet, TypedVisit.Reference);
        }
        else if (step == EntryTexts.Water)
        {
            await EnterAsync(keys, tablet, TypedVisit.Water);
        }
        else if (step == EntryTexts.Stock)
        {
            await EnterAsync(keys, tablet, TypedVisit.Stock);
        }
        else if (step == EntryTexts.Adjust)
        {
            await PressNamedAsync(keys, tablet, EventWords.OutputsTested.En);
            await PressNamedAsync(keys, tablet, StepTexts.AllAutomaticLeft.En);
        }

        await ReadCautionsAsync(keys, tablet);
    }

    private static async Task CloseAsync(Keys keys, Tablet tablet)
    {
        // Too early: the focus goes to what is open.
        await keys.GoAsync("#close-visit");
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Locator("#still-open")).ToBeFocusedAsync();
        await keys.IsSomewhereAsync();
        await PressNamedAsync(keys, tablet, EntryTexts.Add.In(Language.English, StepTexts.Action.En));
        await keys.GoAsync(".lb-item textarea[id$=text]");
        await keys.TypeAsync("Test pH again");
        await keys.PressAsync("Tab");
        await keys.GoAsync(".lb-item input[id$='owner']");
        await keys.TypeAsync("RYA");
        await keys.PressAsync("Tab");
        await keys.GoAsync(".lb-item input[type=date]");

        // Day and month alike: browsers ask for them in the order of their own language.
        await keys.TypeAsync("05052025");
        await Expect(tablet.Page.Locator(".lb-item input[type=date]")).ToHaveValueAsync("2025-05-05");

        // The summary that the customer reads, there and back.
        await keys.GoAsync("#show-sheet");
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Locator(".lb-paper")).ToBeVisibleAsync();
        await Expect(tablet.Page.Locator("#visit-step")).ToBeFocusedAsync();
        await keys.GoAsync("#sheet-back");
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Locator("#close-visit")).ToBeVisibleAsync();
        await keys.IsSomewhereAsync();

        await PressNamedAsync(keys, tablet, StepTexts.SignAs.In(Language.English, "R. Yaffle"));
        await keys.GoAsync("#" + DraftKey.ElementId("visit/signatures/Customer/absentReason"));
        await keys.TypeAsync("nobody in the office");
        await keys.PressAsync("Tab");
        await Expect(tablet.Page.GetByText(EntryTexts.NothingOpen.En)).ToBeVisibleAsync();
        await keys.GoAsync("#close-visit");
        await keys.PressAsync("Enter");
        await Expect(tablet.Page.Locator("#form")).ToBeHiddenAsync();
    }

    private static async Task EnterAsync(Keys keys, Tablet tablet, IReadOnlyList<(string Key, string Text)> fields)
    {
        foreach (var (key, text) in fields)
        {
            await keys.GoAsync("#" + DraftKey.ElementId(key));
            await keys.TypeAsync(text);
        }

        await keys.PressAsync("Tab");
        await tablet.Page.HoldsAsync(fields);
        await keys.IsSomewhereAsync();
    }

    // Every other setting stands as the programme has it; the button goes when it is pressed, and the focus must not go with it.
    private static async Task WalkAsync(Keys keys, Tablet tablet)
    {
        var done = tablet.Page.Locator(".lb-step.lb-chosen small", new() { HasText = EntryTexts.AllDone.En });
        var same = tablet.Page.Locator(".lb-setting > button");
        while (!await done.IsVisibleAsync())
        {
            await Expect(same.Or(done).First).ToBeVisibleAsync();
            if (await same.CountAsync() is > 0 and var left)
            {
                await keys.GoAsync(".lb-setting > button");
                await keys.PressAsync("Enter");
                await Expect(same).Not.ToHaveCountAsync(left);
                await keys.IsSomewhereAsync();
            }
        }
    }

    private static async Task ReadCautionsAsync(Keys keys, Tablet tablet)
    {
        var cautions = tablet.Page.Locator(".lb-caution");
        for (var left = await cautions.CountAsync(); left > 0; left--)
        {
            await keys.GoAsync(".lb-caution button");
            await keys.PressAsync("Enter");
            await Expect(cautions).ToHaveCountAsync(left - 1);
            await keys.IsSomewhereAsync();
        }
    }

    private static async Task PressNamedAsync(Keys keys, Tablet tablet, string name)
    {
        var button = tablet.Page.GetByRole(AriaRole.Button, new() { Name = name, Exact = true }).First;
        await Expect(button).ToBeVisibleAsync();
        await keys.GoAsync(button);
        await keys.PressAsync("Enter");
        await keys.IsSomewhereAsync();
    }
}
