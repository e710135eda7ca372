using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
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
    private const int LeastTarget = 48;

    // What is hidden, or a link within a sentence, is no target of its own.
    private const string SmallTargets = """
        (least) => [...document.querySelectorAll("button, a.button, a.brand, input:not([type=checkbox]):not([type=radio]):not([type=file]), select, summary")]
          .filter((target) => target.checkVisibility() && !target.closest(".lb-form"))
          .map((target) => ({ target, box: target.getBoundingClientRect() }))
          .filter(({ box }) => box.width < least - 0.5 || box.height < least - 0.5)
          .map(({ target, box }) => `${target.outerHTML.slice(0, 80)} ${box.width}x${box.height}`)
        """;

    [Fact]
    [Trait("goal", "U3")]
    public async Task Views_EveryLanguage_AxeFindsNothing_AndThumbsHit()
    {
        await using var host = await JobHost.StartAsync();
        await using var tablet = await Tablet.StartAsync(host.Address, "shell-access");
        var found = new List<string>();
        await LookAsync(tablet, "register, nobody signed in", found);
        await tablet.RegisterAsync();
        foreach (var language in new[] { "English", "Español", "Português" })
        {
            await tablet.GoHomeAsync();
            await tablet.Page.GetByRole(AriaRole.Button, new() { Name = language, Exact = true }).ClickAsync();
            await Expect(tablet.Page.Locator($"html[lang={(language == "English" ? "en" : language == "Español" ? "es" : "pt")}]")).ToHaveCountAsync(1);
            await Expect(tablet.Page.Locator(".mark.due")).ToContainTextAsync(ReadingTexts.DueToday.In(language == "English" ? Language.English : language == "Español" ? Language.Spanish : Language.Portuguese));
            await LookAsync(tablet, language + ", home", found);
            foreach (var view in new[] { "pin", "register", "who" })
            {
                await tablet.Page.GotoAsync("/capture/#/" + view);
                await Expect(tablet.Page.Locator("#view h1")).ToBeVisibleAsync();
                await LookAsync(tablet, $"{language}, {view}", found);
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

    private static async Task LookAsync(Tablet tablet, string name, List<string> found)
    {
        var page = tablet.Page;
        var result = await page.RunAxe(new AxeRunOptions());
        Assert.NotEmpty(result.Passes);
        found.AddRange(result.Violations.SelectMany(rule => rule.Nodes.Select(node => $"{name}: {rule.Id} at {node.Target} {node.Html}")));
        found.AddRange(result.Incomplete.SelectMany(rule => rule.Nodes.Select(node => $"{name}: {rule.Id} (undecided) at {node.Target} {node.Html}")));
        found.AddRange((await page.EvaluateAsync<string[]>(SmallTargets, LeastTarget)).Select(small => $"{name}: smaller than {LeastTarget} px: {small}"));
        foreach (var (width, height) in new[] { (320, 640), (390, 844), (1180, 820), (820, 1180) })
        {
            await page.SetViewportSizeAsync(width, height);
            if (await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > innerWidth"))
            {
                found.Add($"{name}: wider than {width} px");
            }

            if (width is 390 or 820)
            {
                await tablet.PictureAsync($"{name.Replace(", ", "-", StringComparison.Ordinal).Replace(' ', '-')}-{width}");
            }
        }
    }
}
