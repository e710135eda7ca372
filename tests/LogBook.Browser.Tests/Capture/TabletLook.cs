using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using LogBook.Browser.Tests.Jobs;
using Microsoft.Playwright;

namespace LogBook.Browser.Tests.Capture;

/// <summary>Looks at what the tablet shows, for everybody: axe, the size of what is touched, a narrow screen; keeps pictures.</summary>
internal static class TabletLook
{
    private const int LeastTarget = 48;
    private const int LeastGap = 8;

    // What is hidden, or a link within a sentence, is no target of its own.
    private const string SmallTargets = """
        (least) => [...document.querySelectorAll("button, a.button, a.brand, input:not([type=checkbox]):not([type=radio]):not([type=file]), select, summary")]
          .filter((target) => target.checkVisibility() && !target.closest(".lb-form"))
          .map((target) => ({ target, box: target.getBoundingClientRect() }))
          .filter(({ box }) => box.width < least - 0.5 || box.height < least - 0.5)
          .map(({ target, box }) => `${target.outerHTML.slice(0, 80)} ${box.width}x${box.height}`)
        """;

    /// <summary>Adds what is wrong with what is shown now.</summary>
    public static async Task AtAsync(Tablet tablet, string name, List<string> found)
    {
        var page = tablet.Page;
        await AxeAsync(page, name, found);
        found.AddRange((await page.EvaluateAsync<string[]>(SmallTargets, LeastTarget)).Select(small => $"{name}: smaller than {LeastTarget} px: {small}"));
        foreach (var (width, height) in new[] { (320, 640), (390, 844), (1180, 820), (820, 1180) })
        {
            await page.SetViewportSizeAsync(width, height);
            if (await page.EvaluateAsync<bool>("() => document.documentElement.scrollWidth > innerWidth"))
            {
                found.Add($"{name}: wider than {width} px");
            }

            found.AddRange((await page.EvaluateAsync<object[]>(FormTargetsTests.TooSmallOrClose, new[] { LeastTarget, LeastGap })).Skip(1).Select(target => $"{name}, {width} px: {target}"));
            if (width is 390 or 820)
            {
                await tablet.PictureAsync($"{name.Replace(", ", "-", StringComparison.Ordinal).Replace(' ', '-')}-{width}");
            }
        }
    }

    /// <summary>As <see cref="AtAsync"/>, and what axe finds on a device that is set to dark.</summary>
    public static async Task InBothSchemesAsync(Tablet tablet, string name, List<string> found)
    {
        await AtAsync(tablet, name, found);
        await tablet.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
        await AxeAsync(tablet.Page, name + ", dark", found);
        await tablet.PictureAsync(name.Replace(", ", "-", StringComparison.Ordinal).Replace(' ', '-') + "-dark");
        await tablet.Page.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
    }

    private static async Task AxeAsync(IPage page, string name, List<string> found)
    {
        var result = await page.RunAxe(new AxeRunOptions());
        Assert.NotEmpty(result.Passes);
        found.AddRange(result.Violations.SelectMany(rule => rule.Nodes.Select(node => $"{name}: {rule.Id} at {node.Target} {node.Html}")));
        found.AddRange(result.Incomplete.SelectMany(rule => rule.Nodes.Select(node => $"{name}: {rule.Id} (undecided) at {node.Target} {node.Html}")));
    }
}
