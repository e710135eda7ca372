using Microsoft.Playwright;

namespace LogBook.Browser.Tests.Browsers;

/// <summary>A keyboard and nothing else: goes to things by Tab and Shift+Tab, and wants to see at every stop where it is.</summary>
/// <param name="page">The page.</param>
public sealed class Keys(IPage page)
{
    private const int MostPresses = 400;
    private bool _begun;

    // Which way to what is sought: "here", the key to press, or what is wrong at this stop. Only the end of the page may have no focus.
    private const string Way = """
        (sought) => {
          const at = document.activeElement;
          if (at === sought) return "here";
          return at.compareDocumentPosition(sought) & (Node.DOCUMENT_POSITION_PRECEDING) ? "Shift+Tab" : "Tab";
        }
        """;

    // What does not show that it has the focus. The unseen heading of a page is for those who listen; the hidden file box shows on its label.
    private const string Unseen = """
        () => {
          const at = document.activeElement;
          if (at === document.body || at.matches("h1.unseen, .lb-unseen")) return null;
          const style = getComputedStyle(at.closest(".lb-photo-add")?.querySelector("label") ?? at);
          return style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2 ? null : at.outerHTML.slice(0, 200);
        }
        """;

    /// <summary>Goes to the first of what a selector names.</summary>
    public Task GoAsync(string selector) => GoAsync(page.Locator(selector).First);

    /// <summary>Goes to one thing.</summary>
    public async Task GoAsync(ILocator sought)
    {
        // A page that was just opened has the focus nowhere; afterwards nothing may take it away, not even late.
        if (_begun)
        {
            await IsNotLostAsync();
        }

        _begun = true;
        for (var press = 0; press < MostPresses; press++)
        {
            var way = await sought.EvaluateAsync<string>(Way);
            if (way == "here")
            {
                await ShowsAsync();
                return;
            }

            await page.Keyboard.PressAsync(way);
            await ShowsAsync();
        }

        Assert.Fail($"No key leads to {await sought.EvaluateAsync<string>("(one) => one.outerHTML.slice(0, 200)")}; the focus is at {await AtAsync()}.");
    }

    /// <summary>Presses one key.</summary>
    public Task PressAsync(string key) => page.Keyboard.PressAsync(key);

    /// <summary>Types a text where the focus is.</summary>
    public Task TypeAsync(string text) => page.Keyboard.TypeAsync(text);

    /// <summary>The focus is on something, once what was pressed has come about, and it shows.</summary>
    public async Task IsSomewhereAsync()
    {
        await page.EvaluateAsync("() => new Promise((done) => requestAnimationFrame(() => requestAnimationFrame(done)))");
        await IsNotLostAsync();
        await ShowsAsync();
    }

    private async Task IsNotLostAsync() => Assert.NotEqual("BODY", await page.EvaluateAsync<string>("() => document.activeElement.tagName"));

    private async Task ShowsAsync() => Assert.Null(await page.EvaluateAsync<string?>(Unseen));

    private Task<string> AtAsync() => page.EvaluateAsync<string>("() => document.activeElement.outerHTML.slice(0, 200)");
}
