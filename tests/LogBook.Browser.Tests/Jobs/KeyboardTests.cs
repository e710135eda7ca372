using System.Globalization;
using LogBook.Browser.Tests.Browsers;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>The supervisor's desk without a pointer.</summary>
public sealed class KeyboardTests
{
    // Radio buttons of a group are one stop; what is disabled, hidden or in a closed part is none.
    private const string Mark = """
        () => {
          const seen = new Set();
          let number = 0;
          for (const one of document.querySelectorAll("main a[href], main button, main input, main select, main textarea, main summary, main [tabindex='0']")) {
            if (one.disabled || one.type === "hidden" || one.closest("[inert]") || !one.checkVisibility({ visibilityProperty: true, contentVisibilityAuto: true }) || one.getClientRects().length === 0) continue;
            if (one.tabIndex < 0) continue;
            if (one.type === "radio" && (seen.has(one.name) || seen.add(one.name) && false)) continue;
            one.dataset.stop = ++number;
          }
          return number;
        }
        """;

    // What has the focus, and whether a person sees it.
    private const string Here = """
        () => {
          const one = document.activeElement;
          if (!one || one === document.body) return null;
          const style = getComputedStyle(one);
          const radio = one.type === "radio" ? document.querySelector(`[data-stop][name="${one.name}"]`) : null;
          const shows = (style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2) || style.boxShadow !== "none";
          return [(radio ?? one).dataset.stop ?? "0", String(shows), one.outerHTML.slice(0, 120)];
        }
        """;

    [Fact]
    [Trait("goal", "U3")]
    public async Task EveryPage_TabAlone_ReachesEverythingAndShowsWhereItIs()
    {
        await using var host = await JobHost.StartAsync();
        var visit = await SupervisorPages.ReceiveVisitAsync(host);
        await using var browser = await TestBrowser.StartAsync("keyboard");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Supervisor);
        var wrong = new List<string>();
        foreach (var (name, path) in await SupervisorPages.OfAsync(page, visit))
        {
            await page.GoToAsync(name, path);
            var stops = await page.EvaluateAsync<int>(Mark);
            var missing = Enumerable.Range(1, stops).ToHashSet();

            // The frame has its own stops before the page's.
            for (var press = 0; press < stops + 60 && missing.Count > 0; press++)
            {
                await page.Keyboard.PressAsync("Tab");
                if (await page.EvaluateAsync<string[]?>(Here) is [var stop, var shows, var what] && missing.Remove(int.Parse(stop, CultureInfo.InvariantCulture)) && shows != "true")
                {
                    wrong.Add($"{name}: the focus does not show at {what}");
                }
            }

            foreach (var left in missing)
            {
                wrong.Add($"{name}: Tab does not reach {await page.EvaluateAsync<string>($"document.querySelector('[data-stop=\"{left}\"]')?.outerHTML.slice(0, 160) ?? 'what is gone'")}");
            }
        }

        Assert.True(wrong.Count == 0, string.Join(Environment.NewLine, wrong));
    }

    [Fact]
    [Trait("goal", "U3")]
    public async Task Keyboard_Alone_AnswersAFindingPlansAVisitAndEntersLeave()
    {
        await using var host = await JobHost.StartAsync();
        await SupervisorPages.ReceiveVisitAsync(host);
        await using var browser = await TestBrowser.StartAsync("keyboard-acts");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Supervisor);

        // From the first page over the link past the frame to the first finding, and it is taken on.
        await page.GoAsync("/attention");
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Enter");
        await TabToAsync(page, "main a[href*='/attention/finding']");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/attention/finding"));
        await page.IsLiveAsync();
        await TabToAsync(page, ".finding-acts button");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".finding-acts form p:focus")).ToHaveCountAsync(1);

        // Escape leaves the answer and comes back to the button it came from.
        await page.Keyboard.PressAsync("Tab");
        await page.Keyboard.PressAsync("Escape");
        await Expect(page.Locator(".finding-acts .page-actions button:first-child:focus")).ToHaveCountAsync(1);
        await page.Keyboard.PressAsync("Enter");
        await TabToAsync(page, ".finding-acts form button[type=submit]");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".finding-acts .done-note:focus")).ToBeVisibleAsync();

        await page.GoToAsync("plan", "/round/plan");
        await TabToAsync(page, ".plan-open .button");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".done-note.plan-said")).ToBeVisibleAsync();
        Assert.True(await page.EvaluateAsync<bool>("document.activeElement.matches('.plan-said')"), "What was done is not where the focus is.");

        await page.GoToAsync("leave", "/round/leave");
        await TabToAsync(page, "#leave-who");
        await page.Keyboard.PressAsync("ArrowDown");
        await TabToAsync(page, "#leave-from");
        await page.Keyboard.TypeAsync("07042025");
        await TabToAsync(page, "#leave-to");
        await page.Keyboard.TypeAsync("09042025");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".plan-open > li")).ToHaveCountAsync(1);
    }

    [Fact]
    [Trait("goal", "U3")]
    public async Task Keyboard_Alone_OpensStopsOfTheRoundPlansOneAndComesBackToItsPlace()
    {
        await using var host = await JobHost.StartAsync();
        await SupervisorPages.ReceiveVisitAsync(host);
        await using var browser = await TestBrowser.StartAsync("keyboard-round");
        var page = await browser.OpenAsync(host.Address);
        await page.SignInAsync(JobHost.Supervisor);
        await page.GoToAsync("round", "/");
        var last = await page.Locator("main .stop-name").Last.GetAttributeAsync("href");
        Assert.NotEqual(last, await page.Locator("main .stop-name").First.GetAttributeAsync("href"));

        // Back from a site: at the stop it was opened from, in view, and Tab goes on from there.
        await TabToAsync(page, $"main .stop-name[href='{last}']");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex(last + "$"));
        await page.IsLiveAsync();
        await page.GoBackAsync();
        await Expect(page.Locator($"main .stop-name[href='{last}']")).ToBeFocusedAsync();
        await Expect(page.Locator($"main .stop-name[href='{last}']")).ToBeInViewportAsync();
        await page.Keyboard.PressAsync("Shift+Tab");
        await Expect(page.Locator($"main .stop-name[href='{last}']")).Not.ToBeFocusedAsync();

        // The day's plan: one stop is planned, what was done has the focus, and the round tells it.
        await TabToAsync(page, "main a[href^='/round/plan']", "Shift+Tab");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page).ToHaveURLAsync(new System.Text.RegularExpressions.Regex("/round/plan"));
        await page.IsLiveAsync();
        await TabToAsync(page, ".plan-open .button");
        await page.Keyboard.PressAsync("Enter");
        await Expect(page.Locator(".done-note.plan-said")).ToBeFocusedAsync();
        await page.GoBackAsync();
        await Expect(page.Locator("main a[href^='/round/plan']").First).ToBeFocusedAsync();
        await Expect(page.Locator("main .stop-facts").Filter(new() { HasText = "Planned today" })).ToHaveCountAsync(1);
    }

    private static async Task TabToAsync(IPage page, string selector, string key = "Tab")
    {
        for (var press = 0; press < 200; press++)
        {
            await page.Keyboard.PressAsync(key);
            if (await page.EvaluateAsync<bool>("selector => document.activeElement.matches(selector)", selector))
            {
                return;
            }
        }

        Assert.Fail($"{key} does not reach {selector}.");
    }
}
