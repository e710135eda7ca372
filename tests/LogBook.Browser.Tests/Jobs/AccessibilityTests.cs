using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using LogBook.Browser.Tests.Browsers;
using LogBook.Entry.Texts;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace LogBook.Browser.Tests.Jobs;

/// <summary>Axe finds nothing on the main pages at the size of a tablet, and leaves nothing undecided but what is listed with a reason; every page fits the sizes people have.</summary>
public sealed class AccessibilityTests
{
    // Undecided by axe, decided by a person; everything else that is undecided fails.
    private static readonly AxeException[] Judged =
    [
        new("color-contrast", ".wide *", "Columns that are scrolled out of their box or lie under a fixed first one: colours of the cells beside them, which axe has judged."),
    ];

    // What a look can change; the rest is the same page.
    private static readonly AxeRunOptions Colours = new() { RunOnly = new RunOnlyOptions { Type = "rule", Values = ["color-contrast", "link-in-text-block"] } };

    private static readonly (int Width, int Height)[] Sizes = [(1440, 900), (390, 844), (320, 640), (820, 1180)];

    private static readonly EntryStepName[] Steps =
    [
        new("arrive", EntryTexts.Arrive.En), new("controller", EntryTexts.Controller.En), new("reference", EntryTexts.Reference.En), new("water", EntryTexts.Water.En),
        new("stock", EntryTexts.Stock.En), new("tower", EntryTexts.Tower.En), new("samples", EntryTexts.Samples.En), new("adjust", EntryTexts.Adjust.En), new("close", EntryTexts.Close.En),
    ];

    [Fact]
    [Trait("goal", "U3")]
    public async Task Axe_MainPages_FindsNothing()
    {
        await using var host = await JobHost.StartAsync();
        var visit = await SupervisorPages.ReceiveVisitAsync(host);
        await using var browser = await TestBrowser.StartAsync("axe");
        var found = new List<string>();

        var page = await browser.OpenAsync(host.Address);
        await page.GotoAsync("/account/sign-in");
        await LookAsync(page, "sign-in", found);
        await page.SignInAsync(JobHost.Technician);
        await LookAsync(page, "round", found);
        await page.GoAsync("/visit/" + JobHost.Site);
        foreach (var step in Steps)
        {
            await page.StepAsync(step.Shown);
            await LookAsync(page, "visit form, " + step.Name, found);
        }

        await page.StepAsync(EntryTexts.Close.En);
        await page.Locator("#show-sheet").ClickAsync();
        await Expect(page.Locator(".lb-paper")).ToBeVisibleAsync();
        await LookAsync(page, "summary to sign", found);

        var supervisor = await browser.OpenAsync(host.Address);
        await supervisor.SignInAsync(JobHost.Supervisor);
        foreach (var (name, path) in await SupervisorPages.OfAsync(supervisor, visit))
        {
            await supervisor.GoToAsync(name, path);
            await LookAsync(supervisor, name, found);
            await supervisor.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Dark });
            await LookAsync(supervisor, name + ", dark", found, Colours);
            await browser.PictureAsync(supervisor, $"{name}-dark");
            await supervisor.EmulateMediaAsync(new() { ColorScheme = ColorScheme.Light });
            foreach (var (width, height) in Sizes)
            {
                await supervisor.SetViewportSizeAsync(width, height);
                await browser.PictureAsync(supervisor, $"{name}-{width}");
                if (!await supervisor.EvaluateAsync<bool>("document.documentElement.scrollWidth <= document.documentElement.clientWidth"))
                {
                    found.Add($"{name}: wider than {width} px");
                }

                // Their rows turn into named fields, so nothing of them may lie beyond the edge.
                if (width <= 820 && await supervisor.EvaluateAsync<bool>("[...document.querySelectorAll('.wide:has(> .many-columns)')].some(box => box.scrollWidth > box.clientWidth)"))
                {
                    found.Add($"{name}: columns beyond the edge at {width} px");
                }
            }

            await supervisor.SetViewportSizeAsync(820, 1180);
        }

        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    private static async Task LookAsync(IPage page, string name, List<string> found, AxeRunOptions? options = null)
    {
        var result = await page.RunAxe(options ?? new AxeRunOptions());
        Assert.NotEmpty(result.Passes);
        found.AddRange(result.Violations.SelectMany(violation => violation.Nodes.Select(node => $"{name}: {violation.Id} ({violation.Impact}) at {node.Target} {node.Html}")));
        foreach (var (rule, node) in result.Incomplete.SelectMany(rule => rule.Nodes.Select(node => (rule, node))))
        {
            if (!await IsExceptedAsync(page, rule.Id, node.Target.ToString()))
            {
                found.Add($"{name}: {rule.Id} (undecided) at {node.Target} {node.Html} {string.Join(" ", node.Any.Concat(node.All).Concat(node.None).Select(check => check.Message))}");
            }
        }
    }

    private static async Task<bool> IsExceptedAsync(IPage page, string rule, string target)
    {
        foreach (var exception in Judged.Where(exception => exception.Rule == rule))
        {
            if (await page.EvaluateAsync<bool>("([target, selector]) => document.querySelector(target)?.matches(selector) === true", new[] { target, exception.Selector }))
            {
                return true;
            }
        }

        return false;
    }

    private sealed record EntryStepName(string Name, string Shown);
}
