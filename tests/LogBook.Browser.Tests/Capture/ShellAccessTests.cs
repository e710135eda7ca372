using LogBook.Browser.Tests.Browsers;
using LogBook.Browser.Tests.Jobs;
using LogBook.Domain.Languages;
using LogBook.Entry.Texts;
using LogBook.Web.Features;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Capture;

/// <summary>The tablet's views for everybody: axe, the size of what is touched, a narrow screen, three languages, the keyboard.</summary>
public sealed class ShellAccessTests
{
    [Fact]
    [Trait("goal", "U3")]
    public async Task Views_EveryLanguage_AxeFindsNothing_AndThumbsHit()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "shell-access");
        var found = new List<string>();
        await TabletLook.AtAsync(tablet, "register, nobody signed in", found);
        await tablet.RegisterAsync();
        foreach (var language in new[] { "English", "Español", "Português" })
        {
            await tablet.GoHomeAsync();
            await tablet.Page.GetByRole(AriaRole.Button, new() { Name = language, Exact = true }).ClickAsync();
            await Expect(tablet.Page.Locator($"html[lang={(language == "English" ? "en" : language == "Español" ? "es" : "pt")}]")).ToHaveCountAsync(1);
            await Expect(tablet.Page.Locator(".mark.due")).ToContainTextAsync(ReadingTexts.DueToday.In(language == "English" ? Language.English : language == "Español" ? Language.Spanish : Language.Portuguese));
            await TabletLook.AtAsync(tablet, language + ", home", found);
            foreach (var view in new[] { "pin", "register", "who" })
            {
                await tablet.Page.GotoAsync("/capture/#/" + view);
                await Expect(tablet.Page.Locator("#view h1")).ToBeVisibleAsync();
                await TabletLook.AtAsync(tablet, $"{language}, {view}", found);
            }
        }

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    [Fact]
    [Trait("goal", "U3")]
    public async Task Keyboard_Alone_OpensTheForm()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "shell-keyboard");
        await tablet.RegisterAsync();
        var start = tablet.Page.GetByRole(AriaRole.Link, new() { Name = "Start the visit " + JobHost.Site });
        for (var tabs = 0; tabs < 40 && !await start.EvaluateAsync<bool>("(link) => link === document.activeElement"); tabs++)
        {
            await tablet.Page.Keyboard.PressAsync("Tab");
        }

        await Expect(start).ToBeFocusedAsync();
        await tablet.Page.Keyboard.PressAsync("Enter");

        await Expect(tablet.Page.Locator(".lb-form")).ToBeVisibleAsync();
        await tablet.Page.StepAsync(EntryTexts.Close.En);
    }
}
