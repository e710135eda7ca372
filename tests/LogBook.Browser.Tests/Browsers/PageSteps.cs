using LogBook.Entry.Drafts;
using LogBook.Web.Tests.Hosting;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Browsers;

/// <summary>What a person does on the pages.</summary>
public static class PageSteps
{
    // An axis, its labels and a line of readings take thousands of pixels; an empty canvas none.
    private const int LeastPainted = 2000;

    private const string PaintedPixels = """
        [...document.querySelectorAll(".chart-root canvas")].reduce((sum, canvas) => {
          const pixels = canvas.getContext("2d").getImageData(0, 0, canvas.width, canvas.height).data;
          let painted = 0;
          for (let i = 3; i < pixels.length; i += 4) if (pixels[i] > 0) painted++;
          return sum + painted;
        }, 0)
        """;

    /// <summary>Signs in and arrives at the first page of the role.</summary>
    public static async Task SignInAsync(this IPage page, string email)
    {
        await page.GotoAsync("/account/sign-in");
        await page.GetByLabel("E-mail").FillAsync(email);
        await page.GetByLabel("Password").FillAsync(LogBookWebApp.Password);
        await page.GetByRole(AriaRole.Button, new() { Name = "Sign in" }).ClickAsync();
        await page.IsLiveAsync();
    }

    /// <summary>Waits until the page reacts: it is shown a moment earlier than that.</summary>
    public static Task IsLiveAsync(this IPage page) => Expect(page.Locator("main[data-live] h1")).ToBeVisibleAsync();

    /// <summary>Goes to an address and waits until the page reacts.</summary>
    public static async Task GoAsync(this IPage page, string path)
    {
        await page.GotoAsync(path);
        await page.IsLiveAsync();
    }

    /// <summary>Waits until the chart stands on its canvas: not its frame alone, but paint on it.</summary>
    public static async Task ChartIsDrawnAsync(this IPage page)
    {
        await Expect(page.Locator(".chart-root[data-ready=true] canvas").First).ToBeVisibleAsync();
        await page.WaitForFunctionAsync(PaintedPixels + " > " + LeastPainted);
    }

    /// <summary>The box of a field of the visit form.</summary>
    public static ILocator Field(this IPage page, string key) => page.Locator("#" + DraftKey.ElementId(key));

    /// <summary>Types into a field and leaves it.</summary>
    public static async Task EnterAsync(this IPage page, string key, string text)
    {
        var box = page.Field(key);
        await box.ClickAsync();
        await box.FillAsync(string.Empty);
        await box.PressSequentiallyAsync(text);
        await box.BlurAsync();
        await Expect(box).ToHaveValueAsync(text);
    }

    /// <summary>Types into fields one after the other; none may lose what it holds meanwhile.</summary>
    public static async Task EnterAllAsync(this IPage page, IReadOnlyList<(string Key, string Text)> fields)
    {
        foreach (var (key, text) in fields)
        {
            await page.EnterAsync(key, text);
        }

        await page.HoldsAsync(fields);
    }

    /// <summary>Checks that fields hold what was typed.</summary>
    public static async Task HoldsAsync(this IPage page, IReadOnlyList<(string Key, string Text)> fields)
    {
        foreach (var (key, text) in fields)
        {
            await Expect(page.Field(key)).ToHaveValueAsync(text);
        }
    }

    /// <summary>Goes to a step of the visit form by its name.</summary>
    public static async Task StepAsync(this IPage page, string name)
    {
        var step = page.Locator(".lb-step").Filter(new() { HasText = name });
        await step.ClickAsync();
        await Expect(step).ToHaveAttributeAsync("aria-current", "step");
    }
}
